import type { DocumentOptions, DocumentRequest } from '@lathwork/model';
import { Injectable } from '@nestjs/common';
import type { Db } from '../../platform/database/database.js';
import { BuildsRead } from '../builds/builds.read.js';
import { GardensRead } from '../gardens/gardens.read.js';
import { PlansRead, type FinishedPlan } from '../plans/plans.read.js';
import { ConsentsRead } from '../privacy/consents.read.js';
import { SitesRead } from '../sites/sites.read.js';

/** Short enough for a title block: the end of the build's id tells the build, R the revision. */
const planNumberOf = (buildId: string, revision: number): string => `${buildId.slice(-6).toUpperCase()}-R${revision}`;

/** A finished plan with the two names that an export puts on it. */
export interface NamedPlan {
  finished: FinishedPlan;
  buildName: string;
  siteName: string;
}

/** Joins the finished plan with the few names that are printed on it. They are read now and kept nowhere in the plan. */
@Injectable()
export class DocumentSources {
  constructor(
    private readonly plans: PlansRead,
    private readonly builds: BuildsRead,
    private readonly sites: SitesRead,
    private readonly gardens: GardensRead,
    private readonly consents: ConsentsRead,
  ) {}

  async mustBeReady(db: Db, planId: string): Promise<void> {
    await this.plans.mustBeReady(db, planId);
  }

  async named(db: Db, planId: string): Promise<NamedPlan> {
    const finished = await this.plans.finished(db, planId);
    const [buildName, siteName] = [await this.builds.name(db, finished.plan.buildId), await this.sites.label(db, finished.inputs.site.siteId)];
    return { finished, buildName: buildName ?? 'unnamed', siteName: siteName ?? 'unnamed' };
  }

  async requestFor(db: Db, planId: string, options: DocumentOptions): Promise<DocumentRequest> {
    const finished = await this.plans.finished(db, planId);
    const review = finished.plan.reviews.filter(({ decision }) => decision === 'reviewed').at(-1) ?? null;
    return {
      options,
      names: await this.namesFor(db, finished, review?.reviewer ?? null),
      planNumber: planNumberOf(finished.plan.buildId, finished.plan.revision),
      datedOn: finished.plan.createdAt.slice(0, 10),
      status: review ? 'reviewed' : 'draft',
      stale: [...new Set(finished.plan.stale.map(({ reason, subject }) => (subject ? `${reason}: ${subject}` : reason).slice(0, 80)))].slice(0, 20),
      inputs: finished.inputs,
      result: finished.result,
    };
  }

  private async namesFor(db: Db, { plan, inputs }: FinishedPlan, checkedBy: string | null): Promise<DocumentRequest['names']> {
    const garden = await this.gardens.current(db);
    const drawnBy = plan.createdById === null ? null : await this.printedName(db, plan.createdById);
    return {
      garden: garden.name,
      build: (await this.builds.name(db, plan.buildId)) ?? 'unnamed',
      site: (await this.sites.label(db, inputs.site.siteId)) ?? 'unnamed',
      drawnBy: drawnBy ?? garden.name,
      checkedBy,
      invented: garden.invented,
    };
  }

  /** A key stands for a program; a person's name is printed only with their consent. */
  private async printedName(db: Db, principalId: string): Promise<string | null> {
    const isPrivate = (await this.gardens.isMember(db, principalId)) && !(await this.consents.has(db, principalId, 'nameOnPrint'));
    return isPrivate ? null : this.gardens.nameOf(db, principalId);
  }
}
