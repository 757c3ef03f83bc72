package loopwright.catalog.check;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import loopwright.catalog.read.ChoiceName;
import loopwright.catalog.read.Problems;
import loopwright.catalog.standard.Fastening;
import loopwright.catalog.standard.Fastening.SeatMaterial;
import loopwright.catalog.standard.Practice;

/**
 * The practice says how deep screws go into every material, once, and has one washer a thread, one row a thing held and one
 * driver an id.
 */
final class ScrewRulesAreWhole implements Check {

    @Override
    public void run(Items items, Problems problems) {
        for (Items.Placed<Practice> practice : items.of(Practice.class)) {
            Fastening fastening = practice.value().fastening();
            Once once = new Once(practice, problems);
            once.check(
                    "fastening.engagement[%d].material",
                    fastening.engagement().stream()
                            .map(Fastening.Engagement::material)
                            .toList());
            once.check(
                    "fastening.washers[%d].thread",
                    fastening.washers().stream().map(Fastening.Washer::thread).toList());
            once.check(
                    "fastening.fixed[%d].holds",
                    fastening.fixed().stream().map(Fastening.FixedScrews::holds).toList());
            drivers(practice, problems);
            for (SeatMaterial material : SeatMaterial.values()) {
                if (fastening.engagement().stream().noneMatch(e -> e.material() == material)) {
                    problems.add(practice.item()
                            .problem(
                                    "fastening.engagement",
                                    "nothing for " + ChoiceName.of(material),
                                    "a row for each of steel, aluminium, plastic",
                                    ""));
                }
            }
        }
    }

    private static void drivers(Items.Placed<Practice> practice, Problems problems) {
        List<Fastening.Driver> drivers = practice.value().fastening().drivers();
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < drivers.size(); i++) {
            if (!seen.add(drivers.get(i).id())) {
                problems.add(practice.item()
                        .problem(
                                "fastening.drivers[" + i + "].id",
                                "\"" + drivers.get(i).id() + "\" a second time",
                                "an id that no other driver has",
                                ""));
            }
        }
    }

    private record Once(Items.Placed<Practice> practice, Problems problems) {
        void check(String path, List<? extends Enum<?>> words) {
            Set<Enum<?>> seen = new HashSet<>();
            for (int i = 0; i < words.size(); i++) {
                if (!seen.add(words.get(i))) {
                    problems.add(practice.item()
                            .problem(
                                    path.replace("%d", String.valueOf(i)),
                                    ChoiceName.of(words.get(i)) + " a second time",
                                    "each once",
                                    ""));
                }
            }
        }
    }
}
