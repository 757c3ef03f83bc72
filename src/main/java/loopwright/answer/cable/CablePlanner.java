package loopwright.answer.cable;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import loopwright.answer.Inspection;
import loopwright.answer.cable.CablePlan.CableUse;
import loopwright.answer.cable.CablePlan.Feed;
import loopwright.answer.cable.CablePlan.Going;
import loopwright.answer.cable.CablePlan.Verdict;
import loopwright.catalog.part.Lead;
import loopwright.catalog.part.Plug;
import loopwright.catalog.part.Supply;
import loopwright.catalog.standard.Cabling;
import loopwright.catalog.standard.Cabling.PlugSize;
import loopwright.power.cable.CableChoice;
import loopwright.power.cable.CableLength;
import loopwright.power.cable.CableVolume;
import loopwright.power.cable.LeadChoice;
import loopwright.power.cable.Run;
import loopwright.power.cable.Sleeving;
import loopwright.power.cable.Wants;

/** Lays the cables of a build: plug by plug the ways, the best choice of cables, and what that leaves over. */
public final class CablePlanner {

    private final Inspection inspection;
    private final Cabling cabling;
    private final PlugEnds ends;
    private final WaysInside ways;
    private final List<Feed> feeds = new ArrayList<>();
    private final Map<Integer, CableUse> uses = new TreeMap<>();
    private final Map<Integer, Set<String>> holesOf = new TreeMap<>();

    private CablePlanner(Inspection inspection, Cabling cabling) {
        this.inspection = inspection;
        this.cabling = cabling;
        this.ends = new PlugEnds(inspection);
        this.ways = new WaysInside(inspection, cabling);
    }

    /** The plan; empty where practice or supply say nothing of cables. */
    public static Optional<CablePlan> of(Inspection inspection) {
        Optional<Cabling> cabling = inspection.fitCase().catalog().practice().cabling();
        if (cabling.isEmpty() || new PlugEnds(inspection).supply().cables().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new CablePlanner(inspection, cabling.get()).plan());
    }

    private CablePlan plan() {
        List<PlugEnd> wanted = ends.wanted();
        for (Plug plug : Plug.values()) {
            List<PlugEnd> ofPlug = wanted.stream().filter(e -> e.plug() == plug).toList();
            cabling.find(plug).ifPresent(size -> lay(size, ofPlug));
        }
        CableRooms rooms = new CableRooms(inspection, cabling, ways);
        return new CablePlan(
                feeds,
                List.copyOf(uses.values()),
                rooms.holes(List.copyOf(uses.values()), holesOf),
                rooms.rooms(List.copyOf(uses.values()), holesOf),
                rooms.straight(ends));
    }

    /** The supply's cables with a plug, by their numbers from 1. */
    private List<Integer> numbers(Plug plug) {
        List<Supply.Cable> all = ends.supply().cables();
        return IntStream.rangeClosed(1, all.size())
                .filter(n -> all.get(n - 1).plug() == plug)
                .boxed()
                .toList();
    }

    private Supply.Cable cable(int number) {
        return ends.supply().cables().get(number - 1);
    }

    private void lay(PlugSize size, List<PlugEnd> wanted) {
        List<Integer> numbers = numbers(size.plug());
        if (wanted.isEmpty()) {
            numbers.forEach(n -> uses.put(n, unused(n, size)));
            return;
        }
        List<PlugEnd> all = new ArrayList<>();
        all.add(ends.supply(size.plug()));
        all.addAll(wanted);
        WaysInside.Among among = ways.among(size, all);
        Wants wants = wants(size, among, wanted.size());
        List<Optional<Run>> runs = CableChoice.of(
                        numbers.stream().map(this::cable).toList(), wants)
                .runs();
        Map<Integer, Feed> told = new TreeMap<>();
        for (int i = 0; i < numbers.size(); i++) {
            int number = numbers.get(i);
            Optional<Run> run = runs.get(i);
            uses.put(number, run.map(r -> used(number, size, r, wanted)).orElseGet(() -> unused(number, size)));
            run.ifPresent(r -> tell(told, number, r, wanted, among));
        }
        for (int want = 0; want < wanted.size(); want++) {
            int wantedMm = wants.fromSupplyMm().get(want);
            Feed found = told.get(want);
            WaysInside.Found way = among.find(0, want + 1);
            feeds.add(
                    found != null
                            ? found
                            : new Feed(
                                    size.plug(),
                                    wanted.get(want).name(),
                                    Optional.empty(),
                                    new Going(Optional.empty(), way.lengthHmm(), way.holes(), way.open()),
                                    wantedMm,
                                    0,
                                    Verdict.NO_CABLE,
                                    Optional.empty()));
        }
    }

    private Wants wants(PlugSize size, WaysInside.Among among, int count) {
        List<Integer> fromSupply = new ArrayList<>();
        List<List<Integer>> between = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            fromSupply.add(CableLength.fromSupplyMm(among.find(0, i + 1).lengthHmm(), size, cabling.way()));
            List<Integer> row = new ArrayList<>();
            for (int j = 0; j < count; j++) {
                row.add(
                        i == j
                                ? 0
                                : CableLength.toNextMm(among.find(i + 1, j + 1).lengthHmm(), cabling.way()));
            }
            between.add(row);
        }
        return new Wants(fromSupply, between);
    }

    private void tell(Map<Integer, Feed> told, int number, Run run, List<PlugEnd> wanted, WaysInside.Among among) {
        List<Lead> leads = inspection.fitCase().catalog().all(Lead.class);
        int before = 0;
        for (Run.Link link : run.links()) {
            PlugEnd end = wanted.get(link.want());
            WaysInside.Found way = among.find(before, link.want() + 1);
            boolean reaches = link.lacksMm() == 0;
            told.put(
                    link.want(),
                    new Feed(
                            end.plug(),
                            end.name(),
                            Optional.of(number),
                            new Going(
                                    before == 0
                                            ? Optional.empty()
                                            : Optional.of(wanted.get(before - 1).name()),
                                    way.lengthHmm(),
                                    way.holes(),
                                    way.open()),
                            link.wantedMm(),
                            link.hasMm(),
                            reaches ? Verdict.REACHES : Verdict.TOO_SHORT,
                            reaches ? Optional.empty() : LeadChoice.of(leads, end.plug(), link.lacksMm())));
            holesOf.computeIfAbsent(number, n -> new TreeSet<>()).addAll(way.holes());
            before = link.want() + 1;
        }
    }

    private CableUse used(int number, PlugSize size, Run run, List<PlugEnd> wanted) {
        List<String> fed =
                run.links().stream().map(l -> wanted.get(l.want()).name()).toList();
        return use(number, size, fed, run.overMm(), Optional.of(Sleeving.of(cable(number), size, cabling.sleeve())));
    }

    private CableUse unused(int number, PlugSize size) {
        Supply.Cable cable = cable(number);
        double whole = cable.lengthMm() + (cable.plugs() - 1) * cable.toNextMm().orElse(0.0);
        return use(number, size, List.of(), cable.fixed() ? (int) Math.round(whole) : 0, Optional.empty());
    }

    private CableUse use(int number, PlugSize size, List<String> fed, int leftMm, Optional<Sleeving> sleeving) {
        return new CableUse(
                number,
                size.plug(),
                text(cable(number)),
                cable(number).fixed(),
                fed,
                leftMm,
                CableVolume.litres(size, leftMm, cabling.bundle().packing()),
                sleeving);
    }

    private static String text(Supply.Cable cable) {
        return Math.round(cable.lengthMm())
                + (cable.plugs() > 1
                        ? " + " + (cable.plugs() - 1) + " x "
                                + Math.round(cable.toNextMm().orElse(0.0))
                        : "")
                + " mm";
    }
}
