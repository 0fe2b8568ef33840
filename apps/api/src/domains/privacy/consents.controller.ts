import { Body, Controller, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../../platform/access/access.decorators.js';
import type { Actor } from '../../platform/access/actor.js';
import { PageQuery, type Page } from '../../platform/http/page.js';
import { Operation } from '../shared/operation.js';
import { ConsentDto, ConsentEntrySchema, ConsentSchema, ConsentsSchema, WithdrawalDto, type ConsentEntry, type ConsentState } from './consents.dto.js';
import { ConsentsService } from './consents.service.js';

@ApiTags('members')
@Controller('v1/members/me/consents')
export class ConsentsController {
  constructor(private readonly consents: ConsentsService) {}

  @Operation('get', '', { id: 'listConsents', untagged: true, summary: 'What you have agreed to in this garden, and in which words', answer: ConsentsSchema })
  list(@CurrentActor() actor: Actor): Promise<{ items: ConsentState[] }> {
    return this.consents.list(actor);
  }

  @Operation('post', '', { id: 'giveConsent', untagged: true, summary: 'Agree to one purpose', body: ConsentDto, answer: ConsentSchema, status: 200 })
  give(@CurrentActor() actor: Actor, @Body() body: ConsentDto): Promise<ConsentState> {
    return this.consents.give(actor, body);
  }

  @Operation('post', 'withdrawals', {
    id: 'withdrawConsent',
    untagged: true,
    summary: 'Take back what you agreed to',
    body: WithdrawalDto,
    answer: ConsentSchema,
    status: 200,
  })
  withdraw(@CurrentActor() actor: Actor, @Body() body: WithdrawalDto): Promise<ConsentState> {
    return this.consents.withdraw(actor, body.purpose);
  }

  @Operation('get', 'history', {
    id: 'listConsentHistory',
    summary: 'Everything you agreed to and took back, oldest first',
    answer: ConsentEntrySchema,
    page: true,
  })
  history(@CurrentActor() actor: Actor, @Query() query: PageQuery): Promise<Page<ConsentEntry>> {
    return this.consents.history(actor, query);
  }
}
