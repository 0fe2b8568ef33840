import type { VNode } from 'preact';
import type { Stage } from '@lathwork/model';
import type { FixedPart } from '../../../layout/book.js';
import { CareBox, Figure, Mark, Steps, StopBox, Ticks } from '../../../parts/parts.js';
import { common } from '../../../words/en/common.js';
import { pages } from '../../../words/en/pages.js';
import { fill } from '../../../words/fill.js';
import type { Drawings } from '../drawings.js';
import { CARD_SHORTENINGS, cardView, type CardView } from '../view/card.view.js';
import type { Context } from '../view/context.js';

const w = pages.card;
const PICTURE_MIN_MM = [44, 40, 36, 32, 28, 24] as const;
const PICTURE_MAX_MM = 92;

const Side = ({ view }: { view: CardView }): VNode => (
  <div class="side">
    {view.before.length === 0 ? null : (
      <>
        <h3>{w.before}</h3>
        <Ticks items={view.before} />
      </>
    )}
    <h3>{w.tools}</h3>
    <Ticks items={view.tools} />
    {view.parts.length === 0 ? null : (
      <>
        <h3>{w.parts}</h3>
        <div class="parts">
          {view.parts.map((part) => (
            <>
              {part.mark === null ? <span></span> : <Mark label={part.mark} source={part.source} />}
              <span>{part.text}</span>
            </>
          ))}
        </div>
      </>
    )}
    {view.cares.map((care) => (
      <CareBox word={common.care}>{care}</CareBox>
    ))}
  </div>
);

/** Three measured things, then who, when and whether the next stage may start: cells 13 mm high, for a pencil. */
const SignOff = ({ view }: { view: CardView }): VNode => {
  const measured = view.sign.length === 0 ? [w.sign.crew] : view.sign;
  const span = measured.length === 1 ? 'w3' : measured.length === 2 ? 'w3' : 'w2';
  const cells = measured.length === 1 ? [...measured, w.sign.crew] : measured;
  return (
    <div class="sign">
      {cells.map((cell) => (
        <div class={span}>{cell}</div>
      ))}
      <div class="w2">{w.sign.by}</div>
      <div class="w2">{w.sign.when}</div>
      <div class="w2">
        {view.number === view.total ? w.sign.last : fill(w.sign.next, { n: view.number + 1 })}
        <i>{common.yes}</i>
        <i>{common.no}</i>
      </div>
    </div>
  );
};

export function cardPart(ctx: Context, drawings: Drawings, stage: Stage, isFirst: boolean): FixedPart {
  const name = `stage-${stage.stageNumber}`;
  return {
    kind: 'fixed',
    name,
    title: isFirst ? w.title : null,
    orientation: 'portrait',
    shortenings: CARD_SHORTENINGS,
    render: (spare, shortening) => {
      const view = cardView(ctx, stage, shortening);
      return (
      <>
        <div class="stagehead">
          <p class="num" aria-hidden="true">
            {view.number}
          </p>
          <h2 class="title" id={name}>
            {view.title}
          </h2>
          <p class="status">
            <span>{fill(w.stageOf, { n: view.number, total: view.total })},</span> {view.day}
          </p>
        </div>
        <div class="strip4">
          {view.facts.map((fact) => (
            <div>
              <span>{fact.name}</span>
              <strong>{fact.value}</strong>
              <span>{fact.note}</span>
            </div>
          ))}
        </div>
        {view.stop.length === 0 ? null : <StopBox word={common.stop} lead={w.stopLead} items={view.stop} two={view.stop.length > 2} />}
        <div class="card">
          <div class="main">
            <Figure drawing={drawings.framePicture(stage, { wMm: ctx.portrait.widthMm - 74, hMm: Math.min(PICTURE_MAX_MM, (PICTURE_MIN_MM[shortening] ?? 24) + spare) })} />
            <h3>{w.order}</h3>
            <Steps items={view.steps} />
          </div>
          <Side view={view} />
        </div>
        <div>
          <h3 class="gap">
            {w.done} <span>{view.done}</span>
          </h3>
          <SignOff view={view} />
        </div>
      </>
      );
    },
  };
}
