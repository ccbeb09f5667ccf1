// What every part of the key has in common: the session it draws, how things are said, and its requests.
import { ContextConsumer } from '@lit/context';
import { LitElement, type PropertyValues } from 'lit';
import { state } from 'lit/decorators.js';
import { albumContext, type Settings, sessionContext, settingsContext } from '../../contexts/index.ts';
import { type Album, translate } from '../../key/index.ts';
import type { RequestName, Requests, SessionStore, Snapshot } from '../../session/index.ts';
import type { Pictures } from './picture.ts';
import type { Saying } from './said.ts';

/** A part draws the session's snapshot and sends requests; it computes nothing and keeps no answers of its own. */
export abstract class LeadwortPart extends LitElement {
  /** What is drawn; undefined until the key is there. */
  @state() protected snapshot: Snapshot | undefined;
  @state() protected settings: Settings | undefined;
  /** Pictures and trade terms; undefined until they are there, and where there are none. Words alone must do. */
  @state() protected album: Album | undefined;

  #store: SessionStore | undefined;
  #stop: (() => void) | undefined;

  constructor() {
    super();
    new ContextConsumer(this, {
      context: settingsContext,
      subscribe: true,
      callback: (settings) => {
        this.settings = settings;
      },
    });
    new ContextConsumer(this, {
      context: albumContext,
      subscribe: true,
      callback: (album) => {
        this.album = album;
      },
    });
    new ContextConsumer(this, { context: sessionContext, subscribe: true, callback: (store) => this.#watch(store) });
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#watch(this.#store);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#stop?.();
    this.#stop = undefined;
  }

  /** The first words are enough to draw this part; others wait for all of them. */
  protected readonly early: boolean = false;

  protected override shouldUpdate(_changed: PropertyValues): boolean {
    return this.settings !== undefined && (this.early || 'trail' in this.settings.words);
  }

  /** What the parts of one holder have in common; undefined until the key is there. */
  protected get session(): SessionStore | undefined {
    return this.#store;
  }

  protected request<Name extends RequestName>(name: Name, detail: Requests[Name]): void {
    this.#store?.request(name, detail);
  }

  /** A sentence of the key in the language asked for. */
  protected say(sentence: string): string {
    const { snapshot, settings } = this;
    return snapshot && settings ? translate(snapshot.prepared.key, settings.language, sentence) : sentence;
  }

  /** All that is needed to put an answer or a plant into words; only while there are settings, as in render. */
  protected get saying(): Saying {
    const { words, language, units } = this.settings as Settings;
    return { words, language, units, say: (sentence) => this.say(sentence) };
  }

  /** All that is needed to show a state's picture; only while there are settings, as in render. */
  protected get pictures(): Pictures {
    const { language, images, pictured } = this.settings as Settings;
    const { album } = this;
    const opening = this.snapshot?.prepared.key.opening;
    return { album, opening, images, language, coming: pictured === true && album === undefined };
  }

  #watch(store: SessionStore | undefined): void {
    this.#stop?.();
    this.#store = store;
    this.snapshot = store?.snapshot;
    this.#stop = store?.subscribe(() => {
      this.snapshot = store.snapshot;
    });
  }
}
