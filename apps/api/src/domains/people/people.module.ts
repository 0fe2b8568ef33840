import { Module } from '@nestjs/common';
import { AccountsController } from './accounts.controller.js';
import { AccountsRepository } from './accounts.repository.js';
import { AccountsService, PasswordTools } from './accounts.service.js';
import { FactorsController } from './factors.controller.js';
import { FactorsRepository } from './factors.repository.js';
import { FactorsService, FactorTools } from './factors.service.js';
import { InvitationsController } from './invitations.controller.js';
import { InvitationsRepository } from './invitations.repository.js';
import { InvitationsService, InvitationTools } from './invitations.service.js';
import { MembersController } from './members.controller.js';
import { MembersRepository } from './members.repository.js';
import { MembersService } from './members.service.js';
import { PasswordResetsService } from './password-resets.service.js';
import { Recheck } from './recheck.js';
import { SessionOpener } from './session-opener.js';
import { SessionsController } from './sessions.controller.js';
import { SessionsRepository } from './sessions.repository.js';
import { SessionsService, SessionTools } from './sessions.service.js';
import { SignIn } from './sign-in.js';
import { SignUpService, SignUpTools } from './sign-up.service.js';

const REPOSITORIES = [AccountsRepository, FactorsRepository, InvitationsRepository, MembersRepository, SessionsRepository];
const TOOLS = [FactorTools, InvitationTools, PasswordTools, Recheck, SessionOpener, SessionTools, SignIn, SignUpTools];
const SERVICES = [AccountsService, FactorsService, InvitationsService, MembersService, PasswordResetsService, SessionsService, SignUpService];

/** People: their accounts and sessions, and what they are in a garden. */
@Module({
  controllers: [AccountsController, SessionsController, FactorsController, MembersController, InvitationsController],
  providers: [...REPOSITORIES, ...TOOLS, ...SERVICES],
  exports: [Recheck],
})
export class PeopleModule {}
