import { Body, Controller } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../../platform/access/access.decorators.js';
import type { Actor } from '../../platform/access/actor.js';
import { Operation } from '../shared/operation.js';
import { ErasureDto } from './erasure.dto.js';
import { ErasureService } from './erasure.service.js';

@ApiTags('accounts')
@Controller('v1/account')
export class ErasureController {
  constructor(private readonly erasure: ErasureService) {}

  @Operation('post', 'erasure', {
    id: 'eraseAccount',
    summary: 'Erase yourself: account, memberships and all that names you',
    body: ErasureDto,
    answer: null,
    status: 204,
    problems: [409],
  })
  erase(@CurrentActor() actor: Actor, @Body() body: ErasureDto): Promise<void> {
    return this.erasure.erase(actor, body);
  }
}
