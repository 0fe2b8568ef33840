import { Body, Controller } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../../platform/access/access.decorators.js';
import type { Actor } from '../../platform/access/actor.js';
import { IfMatch } from '../../platform/http/etag.js';
import { IdParam } from '../../platform/http/id-param.js';
import type { Reply } from '../../platform/http/reply.js';
import { Operation } from '../shared/operation.js';
import { PrivateDetailsPatchDto, PrivateDetailsSchema, SharedDetailsSchema, type SharedDetails } from './privates.dto.js';
import { PrivatesService } from './privates.service.js';

@ApiTags('members')
@Controller('v1/members')
export class PrivatesController {
  constructor(private readonly privates: PrivatesService) {}

  @Operation('get', 'me/private-details', { id: 'getPrivateDetails', summary: 'Show your private details in this garden', answer: PrivateDetailsSchema })
  show(@CurrentActor() actor: Actor): Promise<Reply> {
    return this.privates.show(actor);
  }

  @Operation('patch', 'me/private-details', {
    id: 'updatePrivateDetails',
    summary: 'Change your private details; kept sealed, seen by you alone unless you agree to more',
    body: PrivateDetailsPatchDto,
    answer: PrivateDetailsSchema,
    ifMatch: true,
  })
  change(@CurrentActor() actor: Actor, @IfMatch() ifMatch: string | undefined, @Body() patch: object): Promise<Reply> {
    return this.privates.change(actor, ifMatch, patch);
  }

  @Operation('delete', 'me/private-details', { id: 'removePrivateDetails', summary: 'Take your private details away for good', answer: null })
  remove(@CurrentActor() actor: Actor): Promise<void> {
    return this.privates.remove(actor);
  }

  @Operation('get', ':id/shared-details', {
    id: 'getSharedDetails',
    untagged: true,
    summary: 'What a member has agreed to share with you',
    answer: SharedDetailsSchema,
  })
  shared(@CurrentActor() actor: Actor, @IdParam('id') id: string): Promise<SharedDetails> {
    return this.privates.shared(actor, id);
  }
}
