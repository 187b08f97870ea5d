import type { Circuit, Panel } from '../../core/boat/supply.ts';
import type { PanelEntry } from '../../core/panels-shape.ts';
import type { FeedEntry, Plan } from '../../core/plan-shape.ts';
import type { CardBoat } from '../cards/card-boat.ts';
import { feedIsOpen } from '../lists/feed-is-open.ts';
import { printCount } from '../lists/print-figure.ts';
import { printAmps, printVolts } from '../lists/print-power.ts';
import { unfedRows } from '../lists/unfed-rows.ts';
import type { PowerNode, PowerSymbol } from './power-node.ts';
import {
  bankWords,
  busFacts,
  circuitWords,
  endFacts,
  mainWords,
  onItsLeads,
  ownFuse,
  runWords,
  shortCaution,
  voltsAtNode,
} from './power-words.ts';

type Parts = Pick<PowerNode, 'symbols' | 'guard'>;

const nothing: Parts = { symbols: [], guard: '' };

const together = (parts: readonly Parts[]): Parts => ({
  symbols: parts.flatMap(({ symbols }) => symbols),
  guard: parts
    .map(({ guard }) => guard)
    .filter((words) => words !== '')
    .join(', '),
});

const unitOf = (port: string): string => port.split('.')[0] ?? port;

/** Makes the tree of one boat; what was drawn is kept, so that a panel that two circuits name is drawn once. */
class Tree {
  readonly #index: CardBoat;
  readonly #plan: Plan;
  readonly #drawn = new Set<string>();

  constructor(index: CardBoat, plan: Plan) {
    this.#index = index;
    this.#plan = plan;
  }

  roots(): PowerNode[] {
    const { boat } = this.#index;
    const banks = boat.supply.banks.map((bank) => this.#bank(bank.id));
    // a converter that no circuit feeds, with what hangs on it
    const loose = boat.supply.dcdc
      .filter(({ id }) => !this.#drawn.has(id))
      .map(({ id }) => this.#converter(id, nothing, []));
    const unfed = unfedRows(this.#index, this.#plan).map(
      ({ key, what, fact, lights }): PowerNode => ({
        ...nothing,
        symbols: ['load'],
        key: `unfed ${key}`,
        about: lights,
        wire: '',
        guessed: false,
        end: 'nothing',
        name: what,
        facts: [fact],
        isOpen: true,
        children: [],
      }),
    );
    return [...banks, ...loose, ...unfed];
  }

  #bank(id: string): PowerNode {
    const bank = this.#index.banks.get(id);
    const entry = this.#plan.banks.find((other) => other.bank === id);
    const main = entry === undefined ? { symbols: [], words: '' } : mainWords(entry.main);
    const isolator: Parts = entry?.isolator === true ? { symbols: ['switch'], guard: 'battery switch' } : nothing;
    const parts = together([
      { symbols: ['battery'], guard: '' },
      { symbols: main.symbols, guard: main.words },
      isolator,
    ]);
    const sum = this.#plan.supplies.find(({ source }) => source === id);
    const lowest = sum === undefined ? [] : [`${printVolts(sum.sourceV)} at its lowest`];
    const draw = sum?.sourceA === undefined ? [] : [`${printAmps(sum.sourceA)} with everything drawing`];
    const children = this.#panelsOn(id);
    const wants = (entry?.cautions ?? []).filter((caution) => caution === 'battery-short' || caution === 'lithium');
    return {
      ...parts,
      key: `bank ${id}`,
      about: [id],
      wire: '',
      guessed: false,
      end: children.length === 0 ? 'nothing' : 'joint',
      name: `bank ${id}${bank === undefined ? '' : `: ${bankWords(bank)}`}`,
      facts: [
        [parts.guard, ...lowest, ...draw].filter((words) => words !== '').join('; '),
        ...(sum?.works === false ? ['It cannot carry everything drawing at once.'] : []),
        ...(children.length === 0 ? ['nothing of this plan hangs on it'] : []),
        ...wants.flatMap(shortCaution),
      ],
      isOpen: sum?.works === false,
      children,
    };
  }

  /** Panels that hang on a source or panel by their feeder, with no circuit between. */
  #panelsOn(from: string): PowerNode[] {
    const named = new Set(
      this.#index.boat.supply.panels.flatMap(({ circuits }) => circuits.flatMap(({ feeds }) => feeds)),
    );
    return this.#index.boat.supply.panels
      .filter((panel) => panel.from === from && !named.has(panel.id))
      .map((panel) => this.#panel(panel, nothing));
  }

  #feederOf(entry: PanelEntry | undefined): string {
    if (entry?.feeder === undefined) return 'feeder not measured';
    const { areaMm2, longestM } = entry.feeder;
    return `feeder ${runWords({ areaMm2, lengthM: longestM, unknown: 'of unknown size' })}`;
  }

  /** A main that a panel has in its own feeder; nothing where bank, circuit or converter guards it. */
  #ownMain(entry: PanelEntry | undefined, isCircuit: boolean): Parts {
    if (entry === undefined) return nothing;
    const { main, guardBy } = entry;
    const isSaid = main.kind === 'fuse' || main.kind === 'breaker';
    const isGuard = guardBy === 'panel-main' || (guardBy === undefined && !isCircuit);
    if (!isSaid && !isGuard) return nothing;
    const { symbols, words } = mainWords(main);
    return { symbols, guard: words };
  }

  #panel(panel: Panel, by: Parts): PowerNode {
    this.#drawn.add(panel.id);
    const entry = this.#plan.panels.find((other) => other.panel === panel.id);
    const parts = together([by, this.#ownMain(entry, by.symbols.length > 0)]);
    const volts = voltsAtNode(this.#plan, panel.id);
    const children = [...panel.circuits.map((circuit) => this.#circuit(panel, circuit)), ...this.#panelsOn(panel.id)];
    return {
      ...parts,
      key: `panel ${panel.id}`,
      about: [panel.id],
      wire: '',
      guessed: false,
      end: 'bar',
      name: `panel ${panel.id}${volts === undefined ? '' : `: ${printVolts(volts)} with everything drawing`}`,
      facts: [
        [parts.guard, this.#feederOf(entry)].filter((words) => words !== '').join('; '),
        ...(children.length === 0 ? ['no circuit is entered on it yet'] : []),
      ],
      isOpen: false,
      children,
    };
  }

  #circuit(panel: Panel, circuit: Circuit): PowerNode {
    const feeds = this.#plan.feeds.filter((feed) => feed.panel === panel.id && feed.circuit === circuit.id);
    const { symbols, words } = circuitWords(circuit, feeds[0]?.circuitA ?? circuit.ratingA);
    const by: Parts = { symbols, guard: words };
    const panels = circuit.feeds.flatMap((id) => {
      const fed = this.#index.panels.get(id);
      return fed === undefined || this.#drawn.has(id) ? [] : [fed];
    });
    const ends = (own: Parts): PowerNode[] => [
      ...panels.map((fed) => this.#panel(fed, own)),
      ...feeds.map((feed) => this.#feed(feed, own)),
    ];
    const count = panels.length + feeds.length;
    const [only] = count === 1 ? ends(by) : [];
    if (only !== undefined) return only;
    const shared = {
      ...by,
      key: `circuit ${panel.id}.${circuit.id}`,
      about: [circuit.id],
      wire: '',
      guessed: false,
      isOpen: false,
    };
    if (count === 0) return { ...shared, end: 'free', name: this.#idleWords(panel, circuit), facts: [], children: [] };
    return {
      ...shared,
      end: 'joint',
      name: words,
      facts: [`${printCount(count, 'feed')} on one circuit`],
      children: ends(nothing),
    };
  }

  /** What a circuit is for that no feed of the plan hangs on. */
  #idleWords(panel: Panel, circuit: Circuit): string {
    const entry = this.#plan.panels.find((other) => other.panel === panel.id);
    const after = entry?.circuits.find((other) => other.circuit === circuit.id);
    if (after?.free === true) return circuit.feeds.length === 0 ? 'free' : 'free when the old unit is out';
    return (after?.feeds ?? circuit.feeds).length === 0 ? 'not of this plan' : 'no line leads from it yet';
  }

  #feed(feed: FeedEntry, by: Parts): PowerNode {
    const own = ownFuse(feed);
    const parts = together([by, own === undefined ? nothing : { symbols: ['fuse'], guard: own }]);
    const line = this.#plan.lines.find(({ id }) => id === feed.line);
    const wire = runWords({ ...feed, unknown: feed.wire === 'aboard' ? 'aboard, size not known' : 'no wire does it' });
    if (this.#index.boat.supply.dcdc.some(({ id }) => id === feed.to)) {
      return this.#converter(feed.to, parts, [wire, endFacts(feed).says]);
    }
    const isBus = this.#index.buses.has(feed.to);
    const unit = unitOf(feed.to);
    const nameOf = (id: string): string => this.#index.kit.get(id)?.name ?? id;
    return {
      ...parts,
      key: feed.line,
      about: [feed.line, unit],
      wire,
      guessed: line?.guessed ?? false,
      end: isBus ? 'bus' : 'load',
      name: this.#index.buses.get(feed.to)?.name ?? nameOf(unit),
      facts: [endFacts(feed).says, ...(isBus ? busFacts(this.#plan, feed.to, nameOf) : onItsLeads(this.#plan, feed))],
      isOpen: feedIsOpen(feed),
      children: [],
    };
  }

  #converter(id: string, by: Parts, facts: readonly string[]): PowerNode {
    this.#drawn.add(id);
    const entry = this.#plan.converters.find(({ converter }) => converter === id);
    const children = this.#panelsOn(id);
    const symbols: PowerSymbol[] = children.length === 0 ? [...by.symbols] : [...by.symbols, 'converter'];
    const makes =
      entry === undefined
        ? ''
        : `: ${entry.inV === undefined ? '' : `${entry.inV} V to `}${entry.outV} V, ${printAmps(entry.ratedA)}${entry.isolated ? ', isolated' : ''}`;
    const isHead = children.length > 0;
    const [wire = '', ...draws] = facts;
    return {
      symbols,
      guard: by.guard,
      key: `converter ${id}`,
      about: [id],
      wire: isHead ? '' : wire,
      guessed: false,
      end: isHead ? 'joint' : 'converter',
      name: `converter ${id}${makes}`,
      facts: isHead ? [[by.guard, wire, ...draws].filter((words) => words !== '').join('; ')] : draws,
      isOpen: false,
      children,
    };
  }
}

/** The direct current of a boat as a tree: banks, what guards them, panels, circuits, and what hangs at their ends. */
export const powerTree = (index: CardBoat, plan: Plan): PowerNode[] => new Tree(index, plan).roots();
