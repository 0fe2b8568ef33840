import type { OpenAPIObject } from '@nestjs/swagger';
import { resolved } from '../http/document-ref.js';
import type { Json } from './described.js';
import { html, joined, prose, type Html, type Piece } from './html.js';

const nameOfRef = (schema: Json | undefined): string | null => (typeof schema?.['$ref'] === 'string' ? (schema['$ref'].split('/').at(-1) ?? null) : null);

/** The name under which the document, and a client made from it, knows a shape; null for one without a name of its own. */
export const shapeName = (schema: Json | undefined): string | null => nameOfRef(schema) ?? nameOfRef(schema?.['items'] as Json | undefined);

const between = (low: unknown, high: unknown, unit: string): string => {
  if (low !== undefined && high !== undefined) return low === high ? `exactly ${String(low)}${unit}` : `${String(low)} to ${String(high)}${unit}`;
  if (low !== undefined) return `at least ${String(low)}${unit}`;
  return high === undefined ? '' : `at most ${String(high)}${unit}`;
};

const NAMED: Readonly<Record<string, string>> = {
  'date-time': 'moment, 2026-03-15T09:00:00Z',
  date: 'day, 2026-03-15',
  uuid: 'id (UUID)',
  email: 'mail address',
  uri: 'address',
};

const numberWords = (schema: Json): Piece => {
  const unit = typeof schema['x-unit'] === 'string' && schema['x-unit'] !== '1' ? schema['x-unit'] : null;
  const kind = schema['type'] === 'integer' ? 'whole number' : 'number';
  const above = schema['exclusiveMinimum'] === undefined ? '' : `more than ${String(schema['exclusiveMinimum'])}`;
  const range = [above, between(schema['minimum'], schema['maximum'], '')].filter(Boolean).join(', ');
  return `${kind}${unit ? ` in ${unit}` : ''}${range ? `, ${range}` : ''}`;
};

const stringWords = (schema: Json): Piece => {
  const example = (schema['examples'] as unknown[] | undefined)?.[0];
  if (String(schema['description'] ?? '').startsWith('Text with its own unit')) return html`text with its unit, <code class="one">"${String(example)}"</code>`;
  const named = NAMED[String(schema['format'])];
  if (named) return named;
  if (schema['pattern'] !== undefined) return html`text like <code>${String(schema['pattern'])}</code>`;
  const length = between(schema['minLength'] === 0 ? undefined : schema['minLength'], schema['maxLength'], ' characters');
  return `text${length ? `, ${length}` : ''}`;
};

/** Makes tables of fields from the schemas of one document. */
export class Shapes {
  constructor(private readonly document: OpenAPIObject) {}

  /** What may stand at one place, in words. */
  words(given: Json | undefined): Piece {
    const schema = resolved(this.document, given);
    if (!schema) return '';
    const choices = (schema['anyOf'] ?? schema['oneOf']) as Json[] | undefined;
    if (choices)
      return joined(
        choices.map((one) => this.words(one)),
        ' or ',
      );
    if (Array.isArray(schema['enum']))
      return joined(
        schema['enum'].map((one) => html`<code>${String(one)}</code>`),
        ', ',
      );
    if (schema['const'] !== undefined) return html`<code>${JSON.stringify(schema['const'])}</code>`;
    return this.ofType(schema);
  }

  private ofType(schema: Json): Piece {
    switch (schema['type']) {
      case 'null':
        return html`<code>null</code>`;
      case 'boolean':
        return html`<code>true</code> or <code>false</code>`;
      case 'number':
      case 'integer':
        return numberWords(schema);
      case 'string':
        return stringWords(schema);
      case 'array': {
        const count = between(schema['minItems'] === 0 ? undefined : schema['minItems'], schema['maxItems'], '');
        return html`list${count ? ` of ${count}` : ''}: ${this.words(schema['items'] as Json)}`;
      }
      case 'object':
        return typeof schema['additionalProperties'] === 'object' ? html`by name: ${this.words(schema['additionalProperties'] as Json)}` : 'object';
      default:
        return Array.isArray(schema['type']) ? schema['type'].join(' or ') : 'anything';
    }
  }

  /** The fields of a shape, those of the objects inside it below them; null where there are none. */
  table(given: Json | undefined, starred: boolean): Html | null {
    const rows = this.rows(given, '', starred, []);
    if (rows.length === 0) return null;
    return html`<table class="fields">
      <thead>
        <tr>
          <th>field</th>
          <th>value</th>
          <th>meaning</th>
        </tr>
      </thead>
      <tbody>
        ${rows}
      </tbody>
    </table>`;
  }

  private rows(given: Json | undefined, prefix: string, starred: boolean, inside: readonly string[]): Html[] {
    const name = nameOfRef(given);
    if (name && inside.includes(name)) return [];
    const schema = resolved(this.document, given);
    if (!schema) return [];
    const path = name ? [...inside, name] : inside;
    const choices = (schema['anyOf'] ?? schema['oneOf'] ?? schema['allOf']) as Json[] | undefined;
    if (choices) return choices.flatMap((one) => this.rows(one, prefix, starred, path));
    if (schema['type'] === 'array') return this.rows(schema['items'] as Json, prefix ? `${prefix}[]` : '', starred, path);
    const required = new Set((schema['required'] as string[] | undefined) ?? []);
    return Object.entries((schema['properties'] as Record<string, Json> | undefined) ?? {}).flatMap(([field, value]) => {
      const place = prefix ? `${prefix}.${field}` : field;
      return [this.row(place, value, starred && required.has(field)), ...this.rows(value, place, starred, path)];
    });
  }

  private row(place: string, value: Json, needed: boolean): Html {
    const said = value['description'] ?? resolved(this.document, value)?.['description'];
    return html`<tr>
      <td><code>${place}</code>${needed && html` <span class="need" title="required">*</span>`}</td>
      <td>${this.words(value)}</td>
      <td>${said !== undefined && prose(said)}</td>
    </tr> `;
  }
}
