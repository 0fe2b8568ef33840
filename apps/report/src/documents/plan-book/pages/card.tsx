import type { VNode } from 'preact';
import type { Stage } from '@lathwork/model';
import type { FixedPart } from '../../../layout/book.js';
import { CareBox, Figure, Mark, PageColumn, Steps, StopBox, Ticks } from '../../../parts/parts.js';
import { common } from '../../../words/en/common.js';
import { pages } from '../../../words/en/pages.js';
import { fill } from '../../../words/fill.js';
import type { Drawings } from '../drawings.js';
import { CARD_SHORTENINGS, cardForm, cardPages, cardView, type CardForm, type CardView } from '../view/card.view.js';
import type { Context } from '../view/context.js';

const w = pages.card;
const PICTURE_MAX_MM = 92;

const Before = ({ view }: { view: CardView }): VNode | null =>
  view.before.length === 0 ? null : (
    <>
      <h3>{w.before}</h3>
      <Ticks items={view.before} />
    </>
  );

const Cares = ({ view }: { view: CardView }): VNode => (
  <>
    {view.cares.map((care) => (
      <CareBox word={common.care}>{care}</CareBox>
    ))}
  </>
);

const Tools = ({ view }: { view: CardView }): VNode => (
  <>
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
  </>
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

const Head = ({ view, id, page, pages: total }: { view: CardView; id: string; page: number; pages: number }): VNode => (
  <div class="stagehead">
    <p class="num" aria-hidden="true">
      {view.number}
    </p>
    <h2 class="title" id={page === 1 ? id : `${id}-${page}`}>
      {view.title}
    </h2>
    <p class="status">
      {page > 1 ? (
        fill(w.cardPage, { n: view.number, page })
      ) : (
        <>
          <span>{fill(w.stageOf, { n: view.number, total: view.total })},</span> {view.day}
          {total > 1 ? <span>, {fill(common.partOf, { part: 1, parts: total })}</span> : null}
        </>
      )}
    </p>
  </div>
);

const Facts = ({ view }: { view: CardView }): VNode => (
  <div class="strip4">
    {view.facts.map((fact) => (
      <div>
        <span>{fact.name}</span>
        <strong>{fact.value}</strong>
        <span>{fact.note}</span>
      </div>
    ))}
  </div>
);

const Stops = ({ view }: { view: CardView }): VNode | null =>
  view.stop.length === 0 ? null : <StopBox word={common.stop} lead={w.stopLead} items={view.stop} two={view.stop.length > 2} />;

const Order = ({ view }: { view: CardView }): VNode => (
  <>
    <h3>{w.order}</h3>
    <Steps items={view.steps} />
  </>
);

const Done = ({ view }: { view: CardView }): VNode => (
  <div>
    <h3 class="gap">
      {w.done} <span>{view.done}</span>
    </h3>
    <SignOff view={view} />
  </div>
);

type Picture = (widthMm: number, heightMm: number) => VNode;

/** All on one page: what must be read before the steps stands before them, on the paper at the right and in the order of reading. */
const OnePage = ({
  ctx,
  view,
  id,
  form,
  heightMm,
  picture,
}: {
  ctx: Context;
  view: CardView;
  id: string;
  form: CardForm;
  heightMm: number;
  picture: Picture;
}): VNode => (
  <>
    <Head view={view} id={id} page={1} pages={1} />
    <Facts view={view} />
    <Stops view={view} />
    {form.across && view.cares.length > 0 ? (
      <div class="cares">
        <Cares view={view} />
      </div>
    ) : null}
    <div class="card">
      <PageColumn kind="side">
        <Before view={view} />
        <Tools view={view} />
        {form.across ? null : <Cares view={view} />}
      </PageColumn>
      <PageColumn kind="main">
        {picture(ctx.portrait.widthMm - 74, heightMm)}
        <Order view={view} />
      </PageColumn>
    </div>
    <Done view={view} />
  </>
);

const TurnOver = ({ view, page }: { view: CardView; page: number }): VNode => <p class="word">{fill(w.turnOver, { n: view.number, page: page + 1 })}</p>;

/** The first page of a card that takes more than one; with more than two, its warnings stand on the pages between. */
const FirstPage = ({ view, id, pages: total }: { view: CardView; id: string; pages: number }): VNode => (
  <>
    <Head view={view} id={id} page={1} pages={total} />
    <Facts view={view} />
    <Stops view={view} />
    <div class="card">
      <div class="side">
        <Tools view={view} />
      </div>
      <div class="main wide">
        {total > 2 ? null : (
          <>
            <Before view={view} />
            <Cares view={view} />
          </>
        )}
      </div>
    </div>
    <TurnOver view={view} page={1} />
  </>
);

/** One of several pages of warnings: an even share of what is to be checked before the start, and of what may hurt. */
const WarningsPage = ({ view, id, page, pages: total }: { view: CardView; id: string; page: number; pages: number }): VNode => {
  const middle = total - 2;
  const share = Math.ceil((view.before.length + view.cares.length) / middle);
  const [from, to] = [(page - 2) * share, (page - 1) * share];
  const part: CardView = {
    ...view,
    before: view.before.slice(from, to),
    cares: view.cares.slice(Math.max(0, from - view.before.length), Math.max(0, to - view.before.length)),
  };
  return (
    <>
      <Head view={view} id={id} page={page} pages={total} />
      <div>
        <Before view={part} />
      </div>
      <div class="cares">
        <Cares view={part} />
      </div>
      <TurnOver view={view} page={page} />
    </>
  );
};

interface LastPageProps {
  ctx: Context;
  view: CardView;
  id: string;
  pages: number;
  heightMm: number;
  picture: Picture;
}
const LastPage = ({ ctx, view, id, pages: total, heightMm, picture }: LastPageProps): VNode => (
  <>
    <Head view={view} id={id} page={total} pages={total} />
    {picture(ctx.portrait.widthMm, heightMm)}
    <div>
      <Order view={view} />
    </div>
    <Done view={view} />
  </>
);

export function cardPart(ctx: Context, drawings: Drawings, stage: Stage, isFirst: boolean): FixedPart {
  const name = `stage-${stage.stageNumber}`;
  const picture: Picture = (wMm, hMm) => <Figure drawing={drawings.framePicture(stage, { wMm, hMm })} />;
  return {
    kind: 'fixed',
    name,
    title: isFirst ? w.title : null,
    orientation: 'portrait',
    shortenings: CARD_SHORTENINGS,
    pages: cardPages,
    render: (spare, shortening, page) => {
      const view = cardView(ctx, stage, shortening);
      const form = cardForm(shortening);
      const heightMm = Math.min(PICTURE_MAX_MM, form.pictureMinMm + spare);
      if (form.pages === 1) return <OnePage ctx={ctx} view={view} id={name} form={form} heightMm={heightMm} picture={picture} />;
      if (page === 1) return <FirstPage view={view} id={name} pages={form.pages} />;
      if (page < form.pages) return <WarningsPage view={view} id={name} page={page} pages={form.pages} />;
      return <LastPage ctx={ctx} view={view} id={name} pages={form.pages} heightMm={heightMm} picture={picture} />;
    },
  };
}
