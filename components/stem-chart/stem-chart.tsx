"use client";

import { useRouter } from "next/navigation";
import { type ReactNode, useEffect, useId, useLayoutEffect, useMemo, useRef, useState } from "react";
import { usePrinting } from "@/components/tables/use-printing";
import { type StemAddress, stemAddress } from "./address";
import type { LotCards } from "./cards";
import { ChartTools } from "./chart-tools";
import { layStems, orderTree } from "./layout/lay-stems";
import { LotPanel } from "./lot-panel";
import { nearestLot, neighbour } from "./nearest";
import { PictureFrame } from "./picture-frame";
import { ReachList } from "./reach-list";
import type { StemTree } from "./stem";
import styles from "./stem-chart.module.css";
import { kinOf, traced as tracedBy, type Way } from "./trace";
import { zoomToOpen } from "./zoom-to-open";

/** A3 across, less its margins, in pixels of 1/96 inch. */
const paperWidth = 1490;

/**
 * The stem chart of a variety with its tools. It is drawn by the server at `width` and again in the browser as wide as there is room. What is
 * looked at stands in the page's address. `seed` is the variety's own seed, 18 px; `shared` what two lots share, worked out by the server.
 */
export function StemChart({
  tree,
  cards,
  title,
  path,
  asked,
  width: firstWidth,
  withoutWord,
  seed,
  shared,
  reachHref,
}: {
  tree: StemTree;
  cards: LotCards;
  title: string;
  /** the page's address without what is asked */
  path: string;
  asked: StemAddress;
  width: number;
  withoutWord?: string;
  seed: ReactNode;
  shared: ReactNode;
  /** where the list of all that came of a lot is given as a file; the lot's id follows */
  reachHref: string;
}) {
  const router = useRouter();
  const id = useId();
  // One object for all frames: what is drawn of it is not drawn again while a lot is pointed at.
  const ids = useMemo(() => ({ hatch: `${id}-hatch`, tone: `${id}-tone`, seed: `${id}-seed` }), [id]);
  const frame = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(firstWidth);
  const [address, setAddress] = useState<StemAddress>(asked);
  const [choosing, setChoosing] = useState(false);
  const [active, setActive] = useState<string | null>(asked.lot);
  const [hovered, setHovered] = useState<string | null>(null);
  const printing = usePrinting();
  const ordered = useMemo(() => orderTree(tree), [tree]);
  const kin = useMemo(() => kinOf(tree), [tree]);
  const traced = useMemo(() => tracedBy(kin, address.lot, address.way, address.with), [kin, address]);
  const picture = useMemo(
    () =>
      layStems(ordered, {
        width: printing ? paperWidth : width,
        zoom: printing ? 1 : address.zoom,
        selected: address.lot,
        compared: address.with,
        traced,
        withoutWord,
      }),
    [ordered, width, printing, address, traced, withoutWord],
  );
  const first = picture.lots.find(({ grown }) => grown.lot.id === active) ?? picture.lots.find(({ fold }) => !fold);
  const centre = useRef<number | null>(null);

  useEffect(() => {
    const element = frame.current;
    if (!element) return;
    const watch = new ResizeObserver(([entry]) => {
      if (entry) setWidth(Math.max(300, Math.round(entry.contentRect.width)));
    });
    watch.observe(element);
    return () => watch.disconnect();
  }, []);

  // A lot that is asked for by the address is brought into sight once; after a zoom the same years stay in the middle.
  // biome-ignore lint/correctness/useExhaustiveDependencies: only a new width moves the years
  useLayoutEffect(() => {
    const element = frame.current;
    if (!element) return;
    const lot = picture.lots.find(({ grown }) => grown.lot.id === address.lot);
    const share = centre.current ?? (lot ? lot.x / picture.width : 1);
    element.scrollLeft = share * picture.width - element.clientWidth / 2;
  }, [picture.width]);

  function show(next: Partial<StemAddress>) {
    const whole = { ...address, ...next };
    setAddress(whole);
    const to = stemAddress(path, whole);
    // What two lots share is worked out by the server; all else stands here already.
    if (whole.with !== address.with && whole.with !== null) router.replace(to, { scroll: false });
    else window.history.replaceState(null, "", to);
  }

  function open(lot: string) {
    setActive(lot);
    if (choosing && address.lot !== null && lot !== address.lot) {
      setChoosing(false);
      show({ with: lot, way: "shared" });
    } else show({ lot, with: null, way: address.way === "shared" ? "back" : address.way });
  }

  function zoomTo(zoom: number, year?: number) {
    const element = frame.current;
    const at = year === undefined && element ? element.scrollLeft + element.clientWidth / 2 : (year ?? 0);
    centre.current = at / picture.width;
    show({ zoom });
  }

  function step(event: React.KeyboardEvent) {
    const from = picture.lots.find(({ grown }) => grown.lot.id === active) ?? first;
    if (!from || event.altKey || event.ctrlKey || event.metaKey) return;
    const next = neighbour(picture, kin, from, event.key);
    if (next) {
      event.preventDefault();
      setActive(next);
      setHovered(next);
      requestAnimationFrame(() => {
        const mark = frame.current?.querySelector<SVGGElement>(`[data-lot="${CSS.escape(next)}"]`);
        mark?.focus({ preventScroll: true });
        mark?.scrollIntoView({ block: "nearest", inline: "nearest" });
      });
    } else if (event.key === "Enter" || event.key === " ") {
      event.preventDefault();
      open(from.grown.lot.id);
    } else if (event.key === "Escape" && address.lot !== null) {
      setChoosing(false);
      setHovered(null);
      show({ lot: null, with: null, way: "back" });
    }
  }

  if (tree.lots.length === 0) return null;
  const card = address.lot === null ? undefined : cards[address.lot];
  const tip =
    hovered !== null && hovered !== address.lot ? picture.lots.find((lot) => lot.grown.lot.id === hovered) : undefined;
  return (
    <div className={styles.chart}>
      <ChartTools
        zoom={address.zoom}
        onZoom={zoomTo}
        selected={card ?? null}
        choosing={choosing}
        withoutWord={withoutWord}
      />
      <PictureFrame
        frame={frame}
        picture={picture}
        ids={ids}
        seed={seed}
        title={title}
        traced={traced}
        asked={address}
        active={first?.grown.lot.id ?? null}
        cards={cards}
        tip={tip}
        onKey={step}
        onPoint={(x, y, reach) => setHovered(nearestLot(picture, x, y, reach))}
        onLeave={() => setHovered(null)}
        onChoose={(x, y, named) => {
          const lot = named ?? nearestLot(picture, x, y, 26);
          if (lot !== null) open(lot);
        }}
        onUnfold={(fold) => zoomTo(zoomToOpen(picture, fold, address.zoom), fold.x)}
      />
      {card ? (
        <LotPanel
          card={card}
          other={address.with === null ? undefined : cards[address.with]}
          way={address.way}
          choosing={choosing}
          onWay={(way: Way) => {
            setChoosing(way === "shared");
            if (way !== "shared") show({ way, with: null });
          }}
          onClose={() => {
            setChoosing(false);
            show({ lot: null, with: null, way: "back" });
          }}
          shared={address.way === "shared" && address.with === asked.with && address.lot === asked.lot ? shared : null}
        />
      ) : null}
      {card && address.way === "forward" ? (
        <ReachList
          lot={card}
          ids={picture.lots.flatMap(({ grown }) => (traced?.has(grown.lot.id) ? [grown.lot.id] : []))}
          cards={cards}
          href={`${reachHref}${card.id}`}
        />
      ) : null}
    </div>
  );
}
