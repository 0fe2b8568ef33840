import { Body, Controller, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../../platform/access/access.decorators.js';
import type { Actor } from '../../platform/access/actor.js';
import { IfMatch } from '../../platform/http/etag.js';
import { IdParam } from '../../platform/http/id-param.js';
import type { Page } from '../../platform/http/page.js';
import type { Reply } from '../../platform/http/reply.js';
import { Operation } from '../shared/operation.js';
import { MemberPatchDto, MemberSchema, MembersQuery, type MemberResponse } from './members.dto.js';
import { MembersService } from './members.service.js';

@ApiTags('members')
@Controller('v1/members')
export class MembersController {
  constructor(private readonly members: MembersService) {}

  @Operation('get', '', { id: 'listMembers', summary: 'List the members of the garden', answer: MemberSchema, page: true })
  list(@CurrentActor() actor: Actor, @Query() query: MembersQuery): Promise<Page<MemberResponse>> {
    return this.members.list(actor, query);
  }

  @Operation('get', ':id', { id: 'getMember', summary: 'Show one member', answer: MemberSchema })
  find(@CurrentActor() actor: Actor, @IdParam('id') id: string): Promise<Reply> {
    return this.members.find(actor, id);
  }

  @Operation('patch', ':id', {
    id: 'updateMember',
    summary: 'Change what a member is called and is',
    body: MemberPatchDto,
    answer: MemberSchema,
    ifMatch: true,
  })
  change(@CurrentActor() actor: Actor, @IdParam('id') id: string, @IfMatch() ifMatch: string | undefined, @Body() patch: object): Promise<Reply> {
    return this.members.change(actor, id, ifMatch, patch);
  }

  @Operation('delete', ':id', { id: 'removeMember', summary: 'Leave the garden, or remove a member', answer: null, problems: [409] })
  remove(@CurrentActor() actor: Actor, @IdParam('id') id: string): Promise<void> {
    return this.members.remove(actor, id);
  }
}
