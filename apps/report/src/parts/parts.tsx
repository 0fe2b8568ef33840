import { createContext, type ComponentChildren, type VNode } from 'preact';
import { useContext } from 'preact/hooks';
import { markSvg, octagonSvg, tapeSvg, triangleSvg } from './svg.js';

/** Name of the page that is being measured; empty when it is set for print. */
export const MeasureName = createContext('');

/** One of the two columns of a page. In the measuring pass each says how tall it is, so that the figure can fill its own. */
export const PageColumn = ({ kind, children }: { kind: 'main' | 'side'; children: ComponentChildren }): VNode => {
  const name = useContext(MeasureName);
  return (
    <div class={kind} {...(name === '' ? {} : { 'data-measure': `${name}/${kind}` })}>
      {children}
    </div>
  );
};

/** Markup that we drew ourselves and escaped ourselves. User text never comes this way. */
export const Drawn = ({ svg, className }: { svg: string; className?: string }): VNode => (
  <div {...(className === undefined ? {} : { class: className })} dangerouslySetInnerHTML={{ __html: svg }} />
);

/** A drawing or chart; nothing where there is nothing to draw. */
export const Figure = ({ drawing }: { drawing: { svg: string } | null }): VNode | null => (drawing === null ? null : <Drawn svg={drawing.svg} />);

export const Mark = ({ label, source }: { label: string; source: 'pile' | 'buy' }): VNode => <Drawn svg={markSvg(label, source)} />;

export const Tape = ({ widthMm, note, label }: { widthMm: number; note: string; label: string }): VNode => <Drawn svg={tapeSvg(widthMm, note, label)} />;

export interface HeadProps {
  id: string;
  title: string;
  over?: string | undefined;
  status?: ComponentChildren;
  level?: 1 | 2;
}

/** Title on the left, at most one status box on the right. */
export const SheetHead = ({ id, title, over, status, level = 2 }: HeadProps): VNode => (
  <div class="top">
    <div>
      {over === undefined ? null : <p class="over">{over}</p>}
      {level === 1 ? (
        <h1 id={id}>{title}</h1>
      ) : (
        <h2 class="title" id={id}>
          {title}
        </h2>
      )}
    </div>
    {status === undefined ? null : <p class="status">{status}</p>}
  </div>
);

const Items = ({ items, kind }: { items: readonly string[]; kind: string }): VNode => (
  <ul class={kind}>
    {items.map((item) => (
      <li key={item}>{item}</li>
    ))}
  </ul>
);

export const Dashes = ({ items, two = false }: { items: readonly string[]; two?: boolean }): VNode => <Items items={items} kind={two ? 'dash two' : 'dash'} />;
export const Ticks = ({ items }: { items: readonly string[] }): VNode => <Items items={items} kind="tick" />;

export const Steps = ({ items }: { items: readonly string[] }): VNode => (
  <ol class="steps">
    {items.map((item) => (
      <li key={item}>{item}</li>
    ))}
  </ol>
);

/** Do not go on. At most one on a page, before the step it guards. */
export const StopBox = ({ word, lead, items, two = true }: { word: string; lead: string; items: readonly string[]; two?: boolean }): VNode => (
  <div class="box-stop">
    <Drawn svg={octagonSvg(word)} />
    <div>
      <p class="word">
        {word} {lead}
      </p>
      <Dashes items={items} two={two} />
    </div>
  </div>
);

/** You or the thing may be hurt. */
export const CareBox = ({ word, children }: { word: string; children: ComponentChildren }): VNode => (
  <div class="box-care">
    <Drawn svg={triangleSvg()} />
    <div>
      <strong>{word}</strong> {children}
    </div>
  </div>
);

/** Someone else must answer first. */
export const AskBox = ({ lead, items }: { lead: string; items: readonly string[] }): VNode => (
  <div class="box-ask">
    <p class="word">{lead}</p>
    <Dashes items={items} />
  </div>
);

export const NoteText = ({ children }: { children: ComponentChildren }): VNode => <p class="box-note">{children}</p>;
