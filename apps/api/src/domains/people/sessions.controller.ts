import { Body, Controller, Query, Req } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Request } from 'express';
import { CurrentActor } from '../../platform/access/access.decorators.js';
import type { Actor } from '../../platform/access/actor.js';
import { IdParam } from '../../platform/http/id-param.js';
import { PageQuery, type Page } from '../../platform/http/page.js';
import type { Reply } from '../../platform/http/reply.js';
import { Operation } from '../shared/operation.js';
import { NewSessionSchema, SessionSchema, SignInDto } from './sessions.dto.js';
import { SessionsService } from './sessions.service.js';

@ApiTags('accounts')
@Controller('v1/sessions')
export class SessionsController {
  constructor(private readonly sessions: SessionsService) {}

  @Operation('post', '', { id: 'createSession', summary: 'Sign in', body: SignInDto, answer: NewSessionSchema })
  create(@Req() request: Request, @Body() body: SignInDto): Promise<Reply> {
    return this.sessions.create(request, body);
  }

  @Operation('get', '', { id: 'listSessions', summary: 'List your open sessions', answer: SessionSchema, page: true })
  list(@CurrentActor() actor: Actor, @Query() query: PageQuery): Promise<Page<object>> {
    return this.sessions.list(actor, query);
  }

  @Operation('delete', '', { id: 'endOtherSessions', summary: 'Sign out everywhere else', answer: null })
  endOthers(@CurrentActor() actor: Actor): Promise<void> {
    return this.sessions.endOthers(actor);
  }

  @Operation('delete', 'current', { id: 'endCurrentSession', summary: 'Sign out', answer: null })
  endCurrent(@CurrentActor() actor: Actor): Promise<Reply> {
    return this.sessions.endCurrent(actor);
  }

  @Operation('delete', ':id', { id: 'endSession', summary: 'End one of your sessions', answer: null })
  end(@CurrentActor() actor: Actor, @IdParam('id') id: string): Promise<void> {
    return this.sessions.end(actor, id);
  }
}
