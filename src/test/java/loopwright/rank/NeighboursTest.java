package loopwright.rank;

import static loopwright.testing.Mm.mm;
import static loopwright.testing.SmallMods.mount;
import static loopwright.testing.SmallMods.seat;
import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import loopwright.catalog.Catalog;
import loopwright.catalog.CatalogReader;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
import loopwright.catalog.brief.Brief;
import loopwright.catalog.brief.Choice;
import loopwright.catalog.brief.LoopWish;
import loopwright.catalog.brief.Terms;
import loopwright.catalog.part.Coolant;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Tube;
import loopwright.fit.FitCase;
import loopwright.fit.FitWish;
import loopwright.loop.Machine;
import loopwright.loop.MachineModel;
import loopwright.rank.Neighbours.Kind;
import loopwright.rank.Neighbours.Neighbour;
import loopwright.testing.SmallCase;
import loopwright.testing.SmallMods.Spot;
import loopwright.testing.SmallParts;
import org.junit.jupiter.api.Test;

/** Each neighbour differs in one thing, and comes to what its own machine and its own parts come to. */
class NeighboursTest {

    private static final Catalog CATALOG = CatalogReader.read(Path.of("catalogs"));

    /** A build, and what is one change away from it. */
    private record Start(FitCase fitCase, Build build, List<Neighbour> near) {

        Terms terms() {
            return fitCase.brief().terms();
        }
    }

    /** The coolest and the cheapest of those that nothing beats, in cases with one mount, with several, and with room to grow. */
    private static final List<Start> STARTS = Stream.of(scenario("slim-desk"), scenario("tight-budget"), roomy())
            .flatMap(NeighboursTest::ends)
            .toList();

    private static MachineModel model(FitCase fitCase) {
        return new MachineModel(
                fitCase.catalog().practice(),
                new Machine.Site(fitCase.brief().limits().roomC(), 0));
    }

    private static List<Neighbour> of(FitCase fitCase, Build build) {
        return new Neighbours(fitCase, model(fitCase)).of(build);
    }

    private static FitCase scenario(String brief) {
        Brief read = CatalogReader.readBrief(Path.of("scenarios/" + brief + ".yaml"), CATALOG);
        return new FitCase(CATALOG, CATALOG.chassis(read.chassis().get(0)), read);
    }

    /** A front that takes one fan or two. */
    private static FitCase roomy() {
        return new SmallCase(400, 320)
                .mount(
                        Face.FRONT,
                        mount("front", Axis.Z, seat("1x120", new Spot(90, 100)), seat("2x120", new Spot(150, 100))))
                .with(SmallParts.radiator("one", "1x120", mm(30)))
                .with(SmallParts.radiator("two", "2x120", mm(30)))
                .with(SmallParts.fan("fan", 120, mm(25)))
                .with(SmallParts.processor("processor", 40))
                .with(SmallParts.card("card", mm(150), 40))
                .fitCase();
    }

    private static Stream<Start> ends(FitCase fitCase) {
        List<RankResult.Ranked> all = new RankSearch(fitCase, FitWish.ALL, model(fitCase), () -> false)
                .run(Order.COST, 1)
                .unbeaten();
        List<Start> out = new ArrayList<>();
        for (RankResult.Ranked one : List.of(all.get(0), all.get(all.size() - 1))) {
            out.add(new Start(fitCase, one.build(), of(fitCase, one.build())));
        }
        return out.stream();
    }

    /** Everything that can be chosen, one fact a choice. */
    private static Map<String, String> facts(FitCase fitCase, Build build) {
        Map<String, String> out = new TreeMap<>();
        build.parts().forEach((role, ids) -> out.put(role, ids.toString()));
        build.machine()
                .mounts()
                .forEach(m -> out.put("blows " + m.mount(), m.direction().name()));
        fitCase.chassis()
                .mods()
                .forEach(m ->
                        out.put("mod " + m.id(), Boolean.toString(build.modIds().contains(m.id()))));
        out.put("duty", Integer.toString(build.dutyPercent()));
        return out;
    }

    private static Set<String> changed(Start start, Build other) {
        Map<String, String> here = facts(start.fitCase(), start.build());
        Map<String, String> there = facts(start.fitCase(), other);
        Set<String> all = new TreeSet<>(here.keySet());
        all.addAll(there.keySet());
        all.removeIf(f -> here.getOrDefault(f, "").equals(there.getOrDefault(f, "")));
        return all;
    }

    private static String pattern(Kind kind) {
        return switch (kind) {
            case LARGER, THICKER, OTHER_CORE -> "radiator (\\S+)(, fans \\1)?|fans (\\S+), radiator \\3";
            case SECOND_LAYER, OTHER_FANS -> "fans \\S+";
            case ONE_MORE -> "blows (\\S+), fans \\1, radiator \\1";
            case BARE_ROW -> "blows (\\S+), fans \\1";
            case TURNED -> "blows \\S+";
            case MOD -> "mod \\S+";
            case PUMP -> "pump(, reservoir)?";
            case BLOCK -> "processor block";
            case DUTY -> "duty";
        };
    }

    @Test
    void eachDiffersInOneThing() {
        Set<Kind> seen = EnumSet.noneOf(Kind.class);
        for (Start start : STARTS) {
            for (Neighbour one : start.near()) {
                assertThat(String.join(", ", changed(start, one.build())))
                        .as(one.kind() + ": " + one.what())
                        .matches(pattern(one.kind()));
                seen.add(one.kind());
            }
        }
        assertThat(seen).containsExactlyInAnyOrder(Kind.values());
    }

    @Test
    void dutiesAreAStepAway() {
        for (Start start : STARTS) {
            for (Neighbour one : start.near()) {
                int away = Math.abs(one.build().dutyPercent() - start.build().dutyPercent());
                assertThat(away)
                        .isEqualTo(one.kind() == Kind.DUTY ? start.terms().dutyStepPercent() : 0);
                assertThat(one.build().dutyPercent()).isBetween(1, 100);
            }
        }
    }

    @Test
    void eachIsAsWarmAsItsMachine() {
        for (Start start : STARTS) {
            MachineModel model = model(start.fitCase());
            for (Neighbour one : start.near()) {
                double overRoomK =
                        model.solve(one.build().machine()).found().orElseThrow().coolantOverRoomK();
                assertThat(one.build().outcome().coolantOverRoomCentiK())
                        .as(one.what())
                        .isEqualTo((int) Math.floor(100 * overRoomK + 0.5));
            }
        }
    }

    @Test
    void theMachineIsMadeOfTheParts() {
        for (Start start : STARTS) {
            for (Neighbour one : start.near()) {
                Machine machine = one.build().machine();
                for (Machine.FanMount mount : machine.mounts()) {
                    int fans = mount.fans().row() * mount.fans().layers();
                    assertThat(one.build().parts().get("fans " + mount.mount()))
                            .hasSize(fans)
                            .containsOnly(mount.fans().fan().id());
                    assertThat(mount.fans().duty().percent())
                            .isEqualTo(one.build().dutyPercent());
                    mount.radiator()
                            .ifPresent(r -> assertThat(one.build().parts().get("radiator " + mount.mount()))
                                    .containsExactly(r.radiator().id()));
                }
                assertThat(one.build().parts().get("pump"))
                        .containsExactly(machine.water().pump().pump().id());
            }
        }
    }

    @Test
    void pricesAndTimesAddUp() {
        for (Start start : STARTS) {
            assertThat(start.build().outcome().priceCents()).isEqualTo(priceCents(start, start.build()));
            for (Neighbour one : start.near()) {
                assertThat(one.build().outcome().priceCents()).as(one.what()).isEqualTo(priceCents(start, one.build()));
                assertThat(one.build().outcome().labourMin())
                        .as(one.what())
                        .isEqualTo(
                                start.terms().assemblyMin() + one.build().bill().handsOnMin());
            }
        }
    }

    /** Parts one by one, tube and coolant up to whole cents, fittings, labour and contingency half up. */
    private static long priceCents(Start start, Build build) {
        List<Part> bought = new ArrayList<>();
        bought.add(start.fitCase().chassis());
        bought.addAll(start.fitCase().drives());
        for (List<String> ids : build.parts().values()) {
            ids.forEach(id -> bought.add(start.fitCase().catalog().all(Part.class).stream()
                    .filter(p -> p.id().equals(id))
                    .findFirst()
                    .orElseThrow()));
        }
        Terms terms = start.terms();
        LoopWish loop = start.fitCase().brief().loop();
        long labourMin = (long) terms.assemblyMin() + build.bill().handsOnMin();
        BigDecimal sum = BigDecimal.valueOf(
                        bought.stream().mapToLong(p -> p.buy().priceCents()).sum())
                .add(upCents(loop.tubeM(), cheapest(start.fitCase().catalog().all(Tube.class), loop.tube())))
                .add(upCents(loop.coolantL(), cheapest(start.fitCase().catalog().all(Coolant.class), loop.coolant())))
                .add(BigDecimal.valueOf(fittingsCents(build)))
                .add(BigDecimal.valueOf(build.bill().materialCents()))
                .add(BigDecimal.valueOf(labourMin * terms.rateCentsPerH())
                        .divide(BigDecimal.valueOf(60), 0, RoundingMode.HALF_UP));
        return sum.multiply(BigDecimal.valueOf(terms.contingencyPercent()).add(BigDecimal.valueOf(100)))
                .divide(BigDecimal.valueOf(100), 0, RoundingMode.HALF_UP)
                .longValueExact();
    }

    /** As read off the demo's catalogue by hand: a straight fitting by its tube, a low elbow, a drain; two elbows a part. */
    private static long fittingsCents(Build build) {
        long straight = switch (build.machine().water().runs().tube().id()) {
            case "tube-soft-10-13" -> 490;
            case "tube-soft-10-16" -> 590;
            case "tube-soft-13-19" -> 690;
            default -> 0;
        };
        if (straight == 0) {
            return 0; // the small case has no fittings at all
        }
        long parts = 1
                + build.machine().water().blocks().size()
                + build.machine().mounts().stream()
                        .filter(m -> m.radiator().isPresent())
                        .count();
        long tanks = build.parts().containsKey("reservoir") ? 1 : 0;
        return 2 * straight * (parts + tanks) + 2 * 790 * parts + 1290;
    }

    private static BigDecimal upCents(double amount, long cents) {
        return BigDecimal.valueOf(amount).multiply(BigDecimal.valueOf(cents)).setScale(0, RoundingMode.CEILING);
    }

    private static long cheapest(List<? extends Part> parts, Choice wish) {
        return parts.stream()
                .filter(p -> wish.anyOf().isEmpty() || wish.anyOf().contains(p.id()))
                .mapToLong(p -> p.buy().priceCents())
                .min()
                .orElseThrow();
    }

    @Test
    void theListIsTheSameEveryTimeAndCoolestFirst() {
        for (Start start : STARTS) {
            List<Neighbour> again = of(start.fitCase(), start.build());
            assertThat(again.stream().map(NeighboursTest::text))
                    .containsExactlyElementsOf(
                            start.near().stream().map(NeighboursTest::text).toList());
            assertThat(again)
                    .isSortedAccordingTo(
                            Comparator.comparingInt(n -> n.build().outcome().coolantOverRoomCentiK()));
            assertThat(again.stream().map(n -> n.build().key()))
                    .doesNotHaveDuplicates()
                    .doesNotContain(start.build().key());
        }
    }

    private static String text(Neighbour one) {
        return one.kind() + " " + one.what() + " " + one.build().key();
    }

    /** Whoever turns back, or takes the mod out again, is where he was. */
    @Test
    void turnsDutiesAndModsLeadBack() {
        for (Start start : STARTS.subList(0, 2)) {
            for (Neighbour one : start.near()) {
                if (one.kind() == Kind.TURNED || one.kind() == Kind.DUTY || one.kind() == Kind.MOD) {
                    assertThat(of(start.fitCase(), one.build()).stream()
                                    .filter(n -> n.kind() == one.kind())
                                    .map(n -> n.build().key()))
                            .as(one.what())
                            .contains(start.build().key());
                }
            }
        }
    }
}
