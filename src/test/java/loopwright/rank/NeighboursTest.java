package loopwright.rank;

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
import loopwright.catalog.Catalog;
import loopwright.catalog.CatalogReader;
import loopwright.catalog.brief.Brief;
import loopwright.catalog.brief.Terms;
import loopwright.catalog.part.Coolant;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Tube;
import loopwright.fit.FitCase;
import loopwright.fit.FitWish;
import loopwright.loop.Machine;
import loopwright.loop.MachineModel;
import loopwright.loop.air.AirDirection;
import loopwright.rank.Neighbours.Kind;
import loopwright.rank.Neighbours.Neighbour;
import org.junit.jupiter.api.Test;

/** Each neighbour differs in one thing, and comes to what its own machine and its own parts come to. */
class NeighboursTest {

    private static final Catalog CATALOG = CatalogReader.read(Path.of("catalogs"));
    private static final Brief BRIEF = CatalogReader.readBrief(Path.of("scenarios/slim-desk.yaml"), CATALOG);
    private static final FitCase CASE =
            new FitCase(CATALOG, CATALOG.chassis(BRIEF.chassis().get(0)), BRIEF);
    private static final Machine.Site SITE = new Machine.Site(BRIEF.limits().roomC(), 0);

    /** The coolest and the cheapest of those that nothing beats. */
    private static final List<Build> BUILDS = ends();

    private static final Map<String, List<Neighbour>> KNOWN = new TreeMap<>();

    private static MachineModel model() {
        return new MachineModel(CATALOG.practice(), SITE);
    }

    private static List<Build> ends() {
        List<RankResult.Ranked> all = new RankSearch(CASE, FitWish.ALL, model(), () -> false)
                .run(Order.COST, 1)
                .unbeaten();
        return List.of(all.get(0).build(), all.get(all.size() - 1).build());
    }

    private static List<Neighbour> of(Build build) {
        return KNOWN.computeIfAbsent(build.key(), k -> new Neighbours(CASE, model()).of(build));
    }

    /** Everything that can be chosen, one fact a choice. */
    private static Map<String, String> facts(Build build) {
        Map<String, String> out = new TreeMap<>();
        build.parts().forEach((role, ids) -> out.put(role, ids.toString()));
        build.machine()
                .mounts()
                .forEach(m -> out.put("blows " + m.mount(), m.direction().name()));
        CASE.chassis()
                .mods()
                .forEach(m ->
                        out.put("mod " + m.id(), Boolean.toString(build.modIds().contains(m.id()))));
        out.put("duty", Integer.toString(build.dutyPercent()));
        return out;
    }

    private static Set<String> changed(Build one, Build other) {
        Map<String, String> here = facts(one);
        Map<String, String> there = facts(other);
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
        for (Build build : BUILDS) {
            for (Neighbour one : of(build)) {
                assertThat(String.join(", ", changed(build, one.build())))
                        .as(one.kind() + ": " + one.what())
                        .matches(pattern(one.kind()));
                seen.add(one.kind());
            }
        }
        assertThat(seen).contains(Kind.TURNED, Kind.MOD, Kind.PUMP, Kind.BLOCK, Kind.DUTY, Kind.OTHER_FANS);
    }

    @Test
    void dutiesAreAStepAway() {
        for (Build build : BUILDS) {
            for (Neighbour one : of(build)) {
                int away = Math.abs(one.build().dutyPercent() - build.dutyPercent());
                assertThat(away)
                        .isEqualTo(one.kind() == Kind.DUTY ? BRIEF.terms().dutyStepPercent() : 0);
                assertThat(one.build().dutyPercent()).isBetween(1, 100);
            }
        }
    }

    @Test
    void eachIsAsWarmAsItsMachine() {
        MachineModel model = model();
        for (Build build : BUILDS) {
            for (Neighbour one : of(build)) {
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
        for (Build build : BUILDS) {
            for (Neighbour one : of(build)) {
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
        for (Build build : BUILDS) {
            assertThat(build.outcome().priceCents()).isEqualTo(priceCents(build));
            for (Neighbour one : of(build)) {
                assertThat(one.build().outcome().priceCents()).as(one.what()).isEqualTo(priceCents(one.build()));
                assertThat(one.build().outcome().labourMin())
                        .as(one.what())
                        .isEqualTo(
                                BRIEF.terms().assemblyMin() + one.build().bill().handsOnMin());
            }
        }
    }

    /** Parts one by one, tube and coolant up to whole cents, labour and contingency half up. */
    private static long priceCents(Build build) {
        List<Part> bought = new ArrayList<>();
        bought.add(CASE.chassis());
        bought.addAll(CASE.drives());
        for (List<String> ids : build.parts().values()) {
            ids.forEach(id -> bought.add(CATALOG.all(Part.class).stream()
                    .filter(p -> p.id().equals(id))
                    .findFirst()
                    .orElseThrow()));
        }
        Terms terms = BRIEF.terms();
        String tube = BRIEF.loop().tube().anyOf().get(0);
        String coolant = BRIEF.loop().coolant().anyOf().get(0);
        long labourMin = (long) terms.assemblyMin() + build.bill().handsOnMin();
        BigDecimal sum = BigDecimal.valueOf(
                        bought.stream().mapToLong(p -> p.buy().priceCents()).sum())
                .add(upCents(BRIEF.loop().tubeM(), price(CATALOG.all(Tube.class), tube)))
                .add(upCents(BRIEF.loop().coolantL(), price(CATALOG.all(Coolant.class), coolant)))
                .add(BigDecimal.valueOf(build.bill().materialCents()))
                .add(BigDecimal.valueOf(labourMin * terms.rateCentsPerH())
                        .divide(BigDecimal.valueOf(60), 0, RoundingMode.HALF_UP));
        return sum.multiply(BigDecimal.valueOf(terms.contingencyPercent()).add(BigDecimal.valueOf(100)))
                .divide(BigDecimal.valueOf(100), 0, RoundingMode.HALF_UP)
                .longValueExact();
    }

    private static BigDecimal upCents(double amount, long cents) {
        return BigDecimal.valueOf(amount).multiply(BigDecimal.valueOf(cents)).setScale(0, RoundingMode.CEILING);
    }

    private static long price(List<? extends Part> parts, String id) {
        return parts.stream()
                .filter(p -> p.id().equals(id))
                .findFirst()
                .orElseThrow()
                .buy()
                .priceCents();
    }

    @Test
    void theListIsTheSameEveryTimeAndCoolestFirst() {
        for (Build build : BUILDS) {
            List<Neighbour> again = new Neighbours(CASE, model()).of(build);
            assertThat(again.stream().map(NeighboursTest::text))
                    .containsExactlyElementsOf(
                            of(build).stream().map(NeighboursTest::text).toList());
            assertThat(again)
                    .isSortedAccordingTo(
                            Comparator.comparingInt(n -> n.build().outcome().coolantOverRoomCentiK()));
            assertThat(again.stream().map(n -> n.build().key()))
                    .doesNotHaveDuplicates()
                    .doesNotContain(build.key());
        }
    }

    private static String text(Neighbour one) {
        return one.kind() + " " + one.what() + " " + one.build().key();
    }

    /** Whoever turns back or takes the mod out again is where he was. */
    @Test
    void turnsAndModsLeadBack() {
        for (Build build : BUILDS) {
            for (Neighbour one : of(build)) {
                if (one.kind() == Kind.TURNED || one.kind() == Kind.DUTY || one.kind() == Kind.MOD) {
                    assertThat(new Neighbours(CASE, model())
                                    .of(one.build()).stream()
                                            .filter(n -> n.kind() == one.kind())
                                            .map(n -> n.build().key()))
                            .as(one.what())
                            .contains(build.key());
                }
            }
        }
        assertThat(BUILDS.get(0).mountsThatBlow(AirDirection.OUT).size()
                        + BUILDS.get(0).mountsThatBlow(AirDirection.IN).size())
                .isEqualTo(BUILDS.get(0).machine().mounts().size());
    }
}
