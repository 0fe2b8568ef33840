import { Body, Controller, Query, Req } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Request } from 'express';
import { CurrentActor } from '../../platform/access/access.decorators.js';
import type { Actor } from '../../platform/access/actor.js';
import { IdParam } from '../../platform/http/id-param.js';
import { PageQuery, type Page } from '../../platform/http/page.js';
import type { Reply } from '../../platform/http/reply.js';
import { Operation } from '../shared/operation.js';
import { InvitationDto, InvitationSchema, JoinedSchema, RedeemInvitationDto, type InvitationResponse } from './invitations.dto.js';
import { InvitationsService } from './invitations.service.js';

@ApiTags('members')
@Controller('v1/invitations')
export class InvitationsController {
  constructor(private readonly invitations: InvitationsService) {}

  @Operation('post', '', {
    id: 'createInvitation',
    summary: 'Invite somebody by mail; open for seven days',
    body: InvitationDto,
    answer: InvitationSchema,
    creating: true,
  })
  create(@CurrentActor() actor: Actor, @Req() request: Request, @Body() body: InvitationDto): Promise<Reply> {
    return this.invitations.create(actor, request, body);
  }

  @Operation('post', 'redeem', {
    id: 'redeemInvitation',
    summary: 'Join the garden that you were invited to',
    body: RedeemInvitationDto,
    answer: JoinedSchema,
    problems: [409],
  })
  redeem(@CurrentActor() actor: Actor, @Body() body: RedeemInvitationDto): Promise<Reply> {
    return this.invitations.redeem(actor, body);
  }

  @Operation('get', '', { id: 'listInvitations', summary: 'List the invitations of the garden', answer: InvitationSchema, page: true })
  list(@CurrentActor() actor: Actor, @Query() query: PageQuery): Promise<Page<InvitationResponse>> {
    return this.invitations.list(actor, query);
  }

  @Operation('get', ':id', { id: 'getInvitation', summary: 'Show one invitation', answer: InvitationSchema })
  find(@CurrentActor() actor: Actor, @IdParam('id') id: string): Promise<Reply> {
    return this.invitations.find(actor, id);
  }

  @Operation('delete', ':id', { id: 'revokeInvitation', summary: 'Take an invitation back', answer: null, problems: [409] })
  revoke(@CurrentActor() actor: Actor, @IdParam('id') id: string): Promise<void> {
    return this.invitations.revoke(actor, id);
  }
}
