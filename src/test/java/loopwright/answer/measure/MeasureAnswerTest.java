package loopwright.answer.measure;

import static loopwright.testing.Mm.hmm;
import static loopwright.testing.Mm.mm;
import static loopwright.testing.SmallMods.mount;
import static loopwright.testing.SmallMods.seat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import loopwright.answer.Halt;
import loopwright.catalog.Catalog;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
import loopwright.catalog.measure.Replacement;
import loopwright.catalog.standard.Practice.ClashHours;
import loopwright.catalog.standard.Practice.Instrument;
import loopwright.catalog.standard.Practice.Measuring;
import loopwright.catalog.standard.Practice.Stage;
import loopwright.catalog.standard.Practice.Takes;
import loopwright.quantity.Dimension;
import loopwright.testing.SmallCase;
import loopwright.testing.SmallMods.Spot;
import loopwright.testing.SmallParts;
import org.junit.jupiter.api.Test;

/**
 * A roof 2x120 over memory, by hand: radiator 30 and fans of 25 or 27 take 55 or 57 of the 56 between roof and memory. There is
 * push and pull, each with its ports at either end: four layouts fit with the thin fans, none with the thick ones. Memory is off
 * by ±2, the radiator by ±0.5, all else exact.
 */
class MeasureAnswerTest {

    private static final Spot SPOT = new Spot(250, 100);
    private static final Dimension MEMORY = mm(30, 2);
    private static final Measuring MEASURING = new Measuring(
            List.of(
                    new Instrument("tape", "tape", Optional.empty(), 1, 3000, List.of(Takes.OUTSIDE)),
                    new Instrument("calliper", "calliper", Optional.empty(), 0.05, 150, List.of(Takes.OUTSIDE))),
            List.of(new ClashHours(Stage.ON_PAPER, 0.5, 0.5), new ClashHours(Stage.AFTER_ASSEMBLY, 10, 11)));

    private static SmallCase roof(Dimension memory, double radiatorMm) {
        return new SmallCase(400, SmallCase.BOARD_TOP_MM + 30 + 56)
                .mount(Face.ROOF, mount("roof", Axis.Y, seat("2x120", SPOT)))
                .with(SmallParts.memory("memory", memory))
                .with(SmallParts.radiator("r-a", "2x120", mm(radiatorMm, 0.5)))
                .with(SmallParts.fan("fan", 120, mm(25)))
                .with(SmallParts.fan("thick", 120, mm(27)))
                .measuring(MEASURING);
    }

    private static Catalog reread(List<Replacement> all) {
        Dimension to = all.get(0).to();
        return all.get(0).id().equals("memory")
                ? roof(to, 30).fitCase().catalog()
                : roof(MEMORY, to.valueHmm() / 100.0).fitCase().catalog();
    }

    private static MeasureAnswer answer(SmallCase small) {
        return new MeasureAnswer(
                small.fitCase(), new MeasureView(Optional.empty(), 10), MeasureAnswerTest::reread, Halt.NEVER);
    }

    private static Set<String> fits(SmallCase small) {
        Set<String> out = new HashSet<>();
        small.fits().fits().forEach(f -> out.add(f.layout().text()));
        return out;
    }

    /** Off by +2 all four die; by −2 the four with thick fans come alive; by ±0.5 neither. */
    @Test
    void whatHangsOnADimensionIsWhatEditedCataloguesSay() {
        MeasureAnswer answer = answer(roof(MEMORY, 30));
        Set<String> now = fits(roof(MEMORY, 30));
        Set<String> more = fits(roof(mm(32, 2), 30));
        Set<String> less = fits(roof(mm(28, 2), 30));
        Set<String> died = new HashSet<>(now);
        died.removeIf(t -> more.contains(t) && less.contains(t));
        Set<String> alive = new HashSet<>(more);
        alive.addAll(less);
        alive.removeAll(now);
        assertThat(died).hasSize(4);
        assertThat(alive).hasSize(4);

        Worth memory = answer.worths().get(0);
        assertThat(memory.measurable().text()).isEqualTo("memory.height_mm");
        assertThat(memory.hang()).isEqualTo(new Hang(died.size(), alive.size(), true));
        Worth radiator = answer.worths().get(1);
        assertThat(radiator.measurable().text()).isEqualTo("r-a.body.thickness_mm");
        assertThat(radiator.hang()).isEqualTo(new Hang(0, 0, true));
    }

    /**
     * Margin 1 mm, standard deviations 1 (memory) and 0.25 (radiator): p = Φ(−1/1.0308) = 0.166. A calliper on the memory
     * leaves no more than the radiator's ±0.5, so most of p is avoided: at most p, and more than half of it.
     */
    @Test
    void regretIsAShareOfWhatALateClashCosts() {
        MeasureAnswer answer = answer(roof(MEMORY, 30));
        double late = answer.stakes().lateCents();
        long rate = answer.fitCase().brief().terms().rateCentsPerH();
        assertThat(late).isCloseTo(10.0 * rate, within(1e-6));
        Worth memory = answer.worths().get(0);
        assertThat(memory.regretCents()).isBetween(0.083 * late, 0.166 * late);
        assertThat(memory.choice().instrument().map(Instrument::id)).contains("calliper");
        assertThat(memory.choice().notGoodEnough()).extracting(Instrument::id).containsExactly("tape");
        assertThat(answer.worths().get(1).regretCents()).isLessThan(memory.regretCents() / 5);
    }

    /** Memory read to ±0.05 leaves 1 mm with a standard deviation of a quarter: nothing is unsure any more. */
    @Test
    void aMeasuredDimensionDropsOut() {
        MeasureAnswer answer = answer(roof(mm(30, 0.05), 30));
        assertThat(answer.looked()).hasSize(4);
        assertThat(answer.worths()).isEmpty();
    }

    @Test
    void layoutsWaitForWhatIsUnknown() {
        MeasureAnswer answer = answer(roof(Dimension.UNKNOWN, 30));
        assertThat(answer.looked()).isEmpty();
        assertThat(answer.worths()).isEmpty();
        assertThat(answer.isAbout()).isTrue();
        Waiting waiting = answer.waiting().get(0);
        assertThat(waiting.measurable().text()).isEqualTo("memory.height_mm");
        assertThat(waiting.layouts()).isEqualTo(8);
        assertThat(waiting.only()).isEqualTo(8);
        assertThat(waiting.where()).isEqualTo("the module in its socket, face of the board to its top");
    }

    @Test
    void oneLayoutIsAskedForByItsKey() {
        SmallCase small = roof(MEMORY, 30);
        String key = small.fits().fits().get(0).layout().key();
        MeasureAnswer answer = new MeasureAnswer(
                small.fitCase(), new MeasureView(Optional.of(key), 1), MeasureAnswerTest::reread, Halt.NEVER);
        assertThat(answer.looked()).hasSize(1);
        assertThat(answer.worths()).hasSize(1);
        assertThat(answer.worths().get(0).hang()).isEqualTo(new Hang(1, 0, true));
        assertThat(answer.witness().orElseThrow().tightest().marginHmm()).isEqualTo(hmm(1));
    }

    @Test
    void whatWasStoppedSaysSo() {
        MeasureAnswer answer = new MeasureAnswer(
                roof(MEMORY, 30).fitCase(),
                new MeasureView(Optional.empty(), 10),
                MeasureAnswerTest::reread,
                () -> Optional.of("time limit of 1 s"));
        assertThat(answer.incompleteBecause()).isPresent();
    }
}
