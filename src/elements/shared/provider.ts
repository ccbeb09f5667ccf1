// Holds a key for the parts inside an element: loads it, keeps the session, and says how things are said and shown.
import { ContextProvider } from '@lit/context';
import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { albumContext, type Settings, sessionContext, settingsContext } from '../../contexts/index.ts';
import type { Album, Month, PreparedKey } from '../../key/index.ts';
import { type SessionStart, SessionStore } from '../../session/index.ts';
import { type FirstWords, first, type Words, wordsFor } from '../../words/index.ts';
import type { Carrier, Carry } from './carried.ts';
import { fire } from './events.ts';
import { languageAt, watchLanguage } from './language.ts';
import { loadKey } from './load.ts';

/** What the element that holds a key says about it; all may change at any time. */
export interface ProviderOptions {
  readonly src: string;
  readonly units: string;
  readonly month: number | undefined;
  readonly observer: string;
  readonly headingLevel: number;
  readonly images: string;
  readonly keep: string | boolean | null;
  readonly linkParameter: string;
  readonly name: string | undefined;
  readonly required: boolean;
  formState: string;
}

export type ProviderState =
  /** No address was given. */
  | { readonly phase: 'empty' }
  | { readonly phase: 'loading' }
  | { readonly phase: 'failed'; readonly error: unknown }
  | { readonly phase: 'ready'; readonly store: SessionStore };

type Host = ReactiveControllerHost & HTMLElement & ProviderOptions;

/** The album of the key: never there, on its way, there, failed, or asked for once more. */
type AlbumState = 'none' | 'coming' | 'here' | 'failed' | 'again';

const LEVEL = 2;
const isMonth = (month: number | undefined): month is Month =>
  month !== undefined && Number.isInteger(month) && month >= 1 && month <= 12;
/** A plain name: the album lies beside the bundle, and nowhere else is anything asked for. */
const PLAIN_NAME = /^[\w-][\w.-]*$/;
/** An address of a folder against the page, ending in a slash; empty for none, and for what is no address. */
function folderAt(images: string): string {
  const folder = images.endsWith('/') ? images : `${images}/`;
  return images && URL.canParse(folder, document.baseURI) ? new URL(folder, document.baseURI).href : '';
}
/** When the page has nothing more urgent to do; some browsers cannot say when that is. */
const idle = () =>
  new Promise<void>((done) => {
    if ('requestIdleCallback' in window) requestIdleCallback(() => done(), { timeout: 2000 });
    else setTimeout(done, 200);
  });

/** The clock is read here and nowhere below. */
const thisMonth = (): Month => (new Date().getMonth() + 1) as Month;

export class Provider implements ReactiveController {
  readonly #host: Host;
  readonly #session: ContextProvider<typeof sessionContext, Host>;
  readonly #settings: ContextProvider<typeof settingsContext, Host>;
  readonly #album: ContextProvider<typeof albumContext, Host>;
  #pictures: AlbumState = 'none';
  #state: ProviderState = { phase: 'empty' };
  #words: FirstWords = first;
  #language = 'en';
  /** The load under way or done; a later one makes an earlier one void. */
  #load: AbortController | undefined;
  #loaded: string | undefined;
  #said: { month: number | undefined; observer: string } | undefined;
  #verdict = '';
  #stopLanguage: (() => void) | undefined;
  #stopSession: (() => void) | undefined;
  #carriers: readonly Carrier[] = [];

  constructor(host: Host) {
    this.#host = host;
    host.addController(this);
    this.#session = new ContextProvider(host, { context: sessionContext, initialValue: undefined });
    this.#settings = new ContextProvider(host, { context: settingsContext, initialValue: undefined });
    this.#album = new ContextProvider(host, { context: albumContext, initialValue: undefined });
  }

  get state(): ProviderState {
    return this.#state;
  }

  get settings(): Settings | undefined {
    return this.#settings.value;
  }

  hostConnected(): void {
    this.#readLanguage();
    this.#stopLanguage = watchLanguage(this.#host, () => this.#readLanguage());
    if (this.#state.phase === 'ready') this.#watch(this.#state.store);
    this.#host.requestUpdate();
  }

  hostDisconnected(): void {
    this.#stopLanguage?.();
    this.#stopSession?.();
    for (const one of this.#carriers) one.pause();
    if (this.#state.phase !== 'loading') return;
    this.#load?.abort();
    this.#loaded = undefined;
    this.#state = { phase: 'empty' };
  }

  hostUpdate(): void {
    if (this.#words === first) this.#readLanguage();
    this.#share();
    if (this.#host.isConnected && this.#host.src !== (this.#loaded ?? '')) void this.reload();
    this.#follow();
  }

  /** Fetches the key anew; the session starts over. */
  async reload(): Promise<void> {
    this.#load?.abort();
    for (const one of this.#carriers) one.close();
    this.#carriers = [];
    const load = new AbortController();
    this.#load = load;
    this.#loaded = this.#host.src;
    if (this.#host.src === '') return this.#become({ phase: 'empty' });
    this.#become({ phase: 'loading' });
    let next: ProviderState;
    try {
      const address = new URL(this.#host.src, document.baseURI);
      const prepared = await loadKey(address, load.signal);
      const start = await this.#kept(prepared, load);
      next = { phase: 'ready', store: this.#start(prepared, start) };
    } catch (error) {
      next = { phase: 'failed', error };
    }
    if (this.#load !== load || load.signal.aborted) return;
    this.#become(next);
    void this.#fetchAlbum(load);
  }

  /** Brings the pictures when the question is on the screen. Until they are there, and where they fail, words do. */
  async #fetchAlbum(load: AbortController): Promise<void> {
    if (this.#state.phase !== 'ready' || this.#pictures === 'none') return;
    const { key } = this.#state.store.snapshot.prepared;
    let album: Album | undefined;
    let next: AlbumState = 'failed';
    try {
      const address = new URL(key.album as string, new URL(this.#loaded ?? '', document.baseURI));
      await this.#host.updateComplete;
      await idle();
      const { loadAlbum } = await import('./album.ts');
      album = await loadAlbum(address, key, load.signal);
      next = album ? 'here' : 'none';
    } catch {
      // Nobody is told: the words are all there. It is tried again with the next question.
    }
    if (this.#load !== load) return;
    this.#pictures = next;
    this.#album.setValue(album);
    this.#share();
  }

  /**
   * What was kept of an earlier visit, what the page's address holds or what the browser gives back to a form; the last of
   * these counts. Without it, and where nothing can be had, a person starts afresh.
   */
  async #kept(prepared: PreparedKey, load: AbortController): Promise<SessionStart | undefined> {
    const host = this.#host;
    const carries: (false | '' | undefined | Promise<{ carry: Carry }>)[] = [
      !/^(null|undefined|false)$/.test(`${host.keep}`) && import('./keep.ts'),
      host.linkParameter && import('./linked.ts'),
      host.name && import('./formed.ts'),
    ];
    const all = await Promise.all(
      carries.map(async (late) => {
        try {
          return late && (await (await late).carry(host, prepared));
        } catch {
          return undefined;
        }
      }),
    );
    const found = all.filter((one) => !!one);
    const carriers = found.map(({ keeper }) => keeper);
    if (load.signal.aborted) for (const one of carriers) one.close();
    else this.#carriers = carriers;
    return found.findLast(({ restored }) => restored)?.restored?.start;
  }

  #start(prepared: PreparedKey, kept?: SessionStart): SessionStore {
    const { month, observer } = this.#host;
    this.#said = { month, observer };
    return new SessionStore(prepared, {
      ...kept,
      month: isMonth(month) ? month : kept?.trail?.length ? kept.month : thisMonth(),
      clock: () => performance.now(),
      ...(prepared.key.observers.has(observer) ? { observer } : {}),
    });
  }

  #become(state: ProviderState): void {
    this.#state = state;
    this.#pictures =
      state.phase === 'ready' && PLAIN_NAME.test(state.store.snapshot.prepared.key.album ?? '') ? 'coming' : 'none';
    this.#album.setValue(undefined);
    this.#stopSession?.();
    if (state.phase === 'ready' && this.#host.isConnected) this.#watch(state.store);
    this.#session.setValue(state.phase === 'ready' ? state.store : undefined);
    this.#share();
    this.#host.requestUpdate();
  }

  /** Tells the page when what a person did changed the verdict, and draws the host anew. */
  #watch(store: SessionStore): void {
    const told = () => {
      const { kind, taxa } = store.snapshot.identification.verdict;
      return { kind, taxa, mark: `${kind} ${taxa[0] ?? ''}` };
    };
    this.#verdict = told().mark;
    for (const one of this.#carriers) one.follow(store);
    let { trail } = store.snapshot;
    this.#stopSession = store.subscribe(() => {
      const before = trail;
      ({ trail } = store.snapshot);
      const at = trail.findIndex((answer) => !before.includes(answer));
      if (at >= 0) {
        const { id, version } = store.snapshot.prepared.key;
        if (before.length === 0) fire(this.#host, 'leadwort-started', { key: id, version });
        fire(this.#host, 'leadwort-answered', { character: trail[at]?.character as string, number: at + 1 });
      }
      const { kind, taxa, mark } = told();
      const changed = mark !== this.#verdict;
      this.#verdict = mark;
      this.#host.requestUpdate();
      if (this.#pictures === 'failed' && this.#load) {
        this.#pictures = 'again';
        void this.#fetchAlbum(this.#load);
      }
      if (changed) fire(this.#host, 'leadwort-verdict', { kind, taxa });
    });
  }

  /** A month or an observer that the page sets later holds from then on. */
  #follow(): void {
    if (this.#state.phase !== 'ready' || this.#said === undefined) return;
    const { store } = this.#state;
    const { month, observer } = this.#host;
    const before = this.#said;
    this.#said = { month, observer };
    if (month !== before.month && isMonth(month)) store.request('month', { month });
    if (observer !== before.observer && store.snapshot.prepared.key.observers.has(observer))
      store.request('observer', { observer });
  }

  #readLanguage(): void {
    const language = languageAt(this.#host) || first.language;
    this.#language = language;
    const words = wordsFor(language);
    if (!(words instanceof Promise)) {
      this.#say(words);
      return;
    }
    // Until its words are there, what is on the screen stays; without a connection the first English ones do.
    void words.then(
      (arrived) => this.#language === language && this.#say(arrived),
      () => this.#language === language && this.#say(first),
    );
    if (this.#settings.value === undefined) this.#say(first);
  }

  #say(words: FirstWords): void {
    const before = this.#settings.value;
    this.#words = words;
    this.#share();
    if (this.#settings.value !== before) this.#host.requestUpdate();
  }

  #share(): void {
    const { units, headingLevel, images } = this.#host;
    const key = this.#state.phase === 'ready' ? this.#state.store.snapshot.prepared.key : undefined;
    const next: Settings = {
      // Parts that say more than the first words wait for the rest.
      words: this.#words as Words,
      language: this.#language,
      units: units === 'us' || units === 'metric' ? units : (key?.units ?? 'metric'),
      headingLevel: Number.isInteger(headingLevel) && headingLevel >= 1 && headingLevel <= 6 ? headingLevel : LEVEL,
      images: folderAt(images),
      pictured: this.#pictures === 'coming' || this.#pictures === 'here',
    };
    const now = this.#settings.value;
    const same = now && (Object.keys(next) as (keyof Settings)[]).every((name) => now[name] === next[name]);
    if (!same) this.#settings.setValue(Object.freeze(next));
  }
}
