import { Body, Controller, Req } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Request } from 'express';
import { CurrentActor } from '../../platform/access/access.decorators.js';
import type { Actor } from '../../platform/access/actor.js';
import type { Reply } from '../../platform/http/reply.js';
import { Operation } from '../shared/operation.js';
import { BegunFactorSchema, BeginFactorDto, ConfirmFactorDto, FactorProofDto, FactorSchema, RecoveryCodesSchema, SetFactorSchema } from './factors.dto.js';
import { FactorsService } from './factors.service.js';
import { NewSessionSchema } from './sessions.dto.js';

@ApiTags('accounts')
@Controller('v1/account/factor')
export class FactorsController {
  constructor(private readonly factors: FactorsService) {}

  @Operation('get', '', { id: 'getFactor', untagged: true, summary: 'Whether a second factor is set', answer: FactorSchema })
  show(@CurrentActor() actor: Actor): Promise<object> {
    return this.factors.show(actor);
  }

  @Operation('post', '', { id: 'beginFactor', summary: 'Begin to set a second factor', body: BeginFactorDto, answer: BegunFactorSchema, problems: [409] })
  begin(@CurrentActor() actor: Actor, @Body() body: BeginFactorDto): Promise<Reply> {
    return this.factors.begin(actor, body);
  }

  @Operation('post', 'confirm', {
    id: 'confirmFactor',
    summary: 'Set the second factor with its first code; the session is replaced',
    body: ConfirmFactorDto,
    answer: SetFactorSchema,
    status: 200,
    problems: [409],
  })
  confirm(@CurrentActor() actor: Actor, @Req() request: Request, @Body() body: ConfirmFactorDto): Promise<Reply> {
    return this.factors.confirm(actor, request, body);
  }

  @Operation('post', 'recovery-codes', {
    id: 'renewRecoveryCodes',
    summary: 'Get new recovery codes; the old ones open nothing any more',
    body: FactorProofDto,
    answer: RecoveryCodesSchema,
    status: 200,
    problems: [409],
  })
  renewCodes(@CurrentActor() actor: Actor, @Body() body: FactorProofDto): Promise<Reply> {
    return this.factors.renewCodes(actor, body);
  }

  @Operation('post', 'removal', {
    id: 'removeFactor',
    summary: 'Remove the second factor; the session is replaced',
    body: FactorProofDto,
    answer: NewSessionSchema,
    status: 200,
    problems: [409],
  })
  remove(@CurrentActor() actor: Actor, @Req() request: Request, @Body() body: FactorProofDto): Promise<Reply> {
    return this.factors.remove(actor, request, body);
  }
}
