package loopwright.rank;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import loopwright.catalog.Catalog;
import loopwright.catalog.CatalogReader;
import loopwright.catalog.brief.Brief;
import loopwright.catalog.brief.BriefLimits;
import loopwright.fit.FitCase;
import loopwright.fit.FitQuery;
import loopwright.fit.FitSearch;
import loopwright.fit.FitWish;
import loopwright.fit.FoundLayout;
import loopwright.fit.ModSet;
import loopwright.loop.Machine;
import loopwright.loop.MachineModel;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Random plans: the bound taken before the air is solved is never above the temperature. */
class AirBoundsTest {

    private static final int TRIES = 400;

    private static final Catalog CATALOG = CatalogReader.read(Path.of("catalogs"));

    /** Far above a solver's accuracy, far below a hundredth of a kelvin. */
    private static final double SLACK_K = 1e-6;

    private static FitCase fitCase(String brief) {
        Brief read = CatalogReader.readBrief(Path.of("scenarios/" + brief + ".yaml"), CATALOG);
        return new FitCase(CATALOG, CATALOG.chassis(read.chassis().get(0)), read);
    }

    /** What draws plans and works them out. */
    private static final class Draw {
        private final FitCase asked;
        private final List<FoundLayout> layouts;
        private final FitQuery query;
        private final MachineModel model;
        private final List<Core> cores;
        private final Blowings blowings;
        private final Bounds bounds;
        private final Vents vents;
        private final Thermal thermal;
        private final Random random;

        Draw(FitCase asked, long seed) {
            this.asked = asked;
            this.random = new Random(seed);
            this.layouts = new FitSearch(asked, FitWish.ALL, () -> false).run().fits();
            this.query = FitQuery.ofBuilds(asked, FitWish.ALL, () -> false);
            this.model = new MachineModel(
                    CATALOG.practice(), new Machine.Site(asked.brief().limits().roomC(), 0));
            this.cores = Cores.of(query.fitCase(), query.partSets());
            WaterReach water = new WaterReach(
                    model,
                    cores.stream().map(c -> c.heat().water()).distinct().toList(),
                    asked.brief().limits().coolantMaxC());
            this.blowings = new Blowings(query.fitCase(), model, water);
            this.bounds = new Bounds(query.fitCase(), blowings);
            this.vents = new Vents(query.fitCase(), model);
            this.thermal = new Thermal(query.fitCase(), model, BriefLimits.HeatLimits.NONE);
        }

        /** A bound, and the temperature it is of; empty where that is hotter than any build may be. */
        Optional<Told> next() {
            FoundLayout found = pick(layouts);
            ModSet mods = pick(found.needed());
            AirPlans.AirPlan plan = pick(new AirPlans(query).of(found.layout().stacks(), mods));
            int duty = pick(bounds.dutiesPercent());
            Core core = pick(cores);
            boolean isItself = random.nextBoolean();
            List<Floor> floors = new ArrayList<>();
            List<Blowing> picked = new ArrayList<>();
            for (int i = 0; i < plan.stacks().size(); i++) {
                Slot slot = blowings.slots(
                                plan.stacks().get(i), plan.directions().get(i), mods)
                        .at(duty);
                Blowing blowing = pick(slot.all());
                picked.add(blowing);
                floors.add(isItself ? blowing.floor() : slot.floor());
            }
            Vents.Openings openings = vents.of(plan.stacks(), mods);
            double bound = openings.bounds(duty).leastOverRoomK(core, plan.directions(), floors);
            Machine machine = thermal.inAir(Airing.of(picked, duty), openings).machine(core.heat());
            return model.solve(machine)
                    .found()
                    .filter(s -> s.water().meanC() <= asked.brief().limits().coolantMaxC())
                    .map(s -> new Told(bound, s.coolantOverRoomK(), machine));
        }

        private <T> T pick(List<T> all) {
            return all.get(random.nextInt(all.size()));
        }
    }

    private record Told(double boundK, double exactK, Machine machine) {}

    @ParameterizedTest
    @CsvSource({"slim-desk, 41", "tight-budget, 42"})
    void neverExceedTheTemperature(String brief, long seed) {
        Draw draw = new Draw(fitCase(brief), seed);
        int checked = 0;
        double closest = 0;
        for (int i = 0; i < TRIES; i++) {
            Optional<Told> told = draw.next();
            if (told.isPresent()) {
                assertThat(told.get().boundK())
                        .as("seed " + seed + ", try " + i + ", "
                                + told.get().machine().mounts())
                        .isLessThanOrEqualTo(told.get().exactK() + SLACK_K);
                closest = Math.max(closest, told.get().boundK() / told.get().exactK());
                checked++;
            }
        }
        assertThat(checked).isGreaterThan(TRIES / 20);
        assertThat(closest).as("bounds that say something").isGreaterThan(0.5);
    }
}
