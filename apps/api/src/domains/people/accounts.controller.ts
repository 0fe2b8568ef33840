import { Body, Controller, Query, Req } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Request } from 'express';
import { CurrentActor } from '../../platform/access/access.decorators.js';
import type { Actor } from '../../platform/access/actor.js';
import { IfMatch } from '../../platform/http/etag.js';
import { PageQuery, type Page } from '../../platform/http/page.js';
import type { Reply } from '../../platform/http/reply.js';
import { Operation } from '../shared/operation.js';
import {
  AccountEventSchema,
  AccountGardenSchema,
  AccountPatchDto,
  AccountSchema,
  ConfirmDto,
  PasswordChangeDto,
  PasswordResetDto,
  RedeemResetDto,
  SignUpDto,
  type EventResponse,
  type MembershipResponse,
} from './accounts.dto.js';
import { AccountsService } from './accounts.service.js';
import { PasswordResetsService } from './password-resets.service.js';
import { NewSessionSchema } from './sessions.dto.js';
import { SignUpService } from './sign-up.service.js';

@ApiTags('accounts')
@Controller('v1')
export class AccountsController {
  constructor(
    private readonly signUp: SignUpService,
    private readonly accounts: AccountsService,
    private readonly resets: PasswordResetsService,
  ) {}

  @Operation('post', 'accounts', { id: 'createAccount', summary: 'Make an account; a code comes by mail', body: SignUpDto, answer: null, status: 202 })
  create(@Req() request: Request, @Body() body: SignUpDto): Promise<void> {
    return this.signUp.create(request, body);
  }

  @Operation('post', 'accounts/confirm', {
    id: 'confirmAccount',
    summary: 'Confirm the mail address of a new account',
    body: ConfirmDto,
    answer: null,
    status: 204,
  })
  confirm(@Body() body: ConfirmDto): Promise<void> {
    return this.signUp.confirm(body);
  }

  @Operation('post', 'password-resets', {
    id: 'createPasswordReset',
    summary: 'Ask for a mail that lets you set a new password',
    body: PasswordResetDto,
    answer: null,
    status: 202,
  })
  askReset(@Req() request: Request, @Body() body: PasswordResetDto): Promise<void> {
    return this.resets.create(request, body.email);
  }

  @Operation('post', 'password-resets/redeem', {
    id: 'redeemPasswordReset',
    summary: 'Set a new password with the code of the mail; all sessions end',
    body: RedeemResetDto,
    answer: null,
    status: 204,
  })
  redeemReset(@Body() body: RedeemResetDto): Promise<void> {
    return this.resets.redeem(body);
  }

  @Operation('get', 'account', { id: 'getAccount', summary: 'Show your account', answer: AccountSchema })
  show(@CurrentActor() actor: Actor): Promise<Reply> {
    return this.accounts.show(actor);
  }

  @Operation('patch', 'account', { id: 'updateAccount', summary: 'Change your name or language', body: AccountPatchDto, answer: AccountSchema, ifMatch: true })
  change(@CurrentActor() actor: Actor, @IfMatch() ifMatch: string | undefined, @Body() patch: object): Promise<Reply> {
    return this.accounts.change(actor, ifMatch, patch);
  }

  @Operation('post', 'account/password', {
    id: 'changePassword',
    summary: 'Change your password; all other sessions end and yours is replaced',
    body: PasswordChangeDto,
    answer: NewSessionSchema,
    status: 200,
  })
  changePassword(@CurrentActor() actor: Actor, @Req() request: Request, @Body() body: PasswordChangeDto): Promise<Reply> {
    return this.accounts.changePassword(actor, request, body);
  }

  @Operation('get', 'account/events', {
    id: 'listAccountEvents',
    summary: 'What happened to your account, newest first',
    answer: AccountEventSchema,
    page: true,
  })
  events(@CurrentActor() actor: Actor, @Query() query: PageQuery): Promise<Page<EventResponse>> {
    return this.accounts.events(actor, query);
  }

  @Operation('get', 'account/gardens', { id: 'listAccountGardens', summary: 'The gardens you are a member of', answer: AccountGardenSchema, page: true })
  gardens(@CurrentActor() actor: Actor, @Query() query: PageQuery): Promise<Page<MembershipResponse>> {
    return this.accounts.gardens(actor, query);
  }
}
