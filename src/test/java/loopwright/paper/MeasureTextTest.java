package loopwright.paper;

import static loopwright.testing.Mm.mm;
import static loopwright.testing.SmallMods.mount;
import static loopwright.testing.SmallMods.seat;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.Optional;
import loopwright.answer.Halt;
import loopwright.answer.measure.MeasureAnswer;
import loopwright.answer.measure.MeasureView;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
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
 * A roof of 1 mm room to spare over memory that is off by ±2: all four layouts die when it is 2 taller. Nothing else is off, so
 * that a reading avoids 0.1177 (Simpson's rule, done apart) of 10 hours at 42: 49 EUR.
 */
class MeasureTextTest {

    private static SmallCase roof(Dimension memory) {
        return new SmallCase(400, SmallCase.BOARD_TOP_MM + 30 + 56)
                .mount(Face.ROOF, mount("roof", Axis.Y, seat("2x120", new Spot(250, 100))))
                .with(SmallParts.memory("memory", memory))
                .with(SmallParts.radiator("r-a", "2x120", mm(30)))
                .with(SmallParts.fan("fan", 120, mm(25)))
                .measuring(new Measuring(
                        List.of(
                                new Instrument("tape", "tape", Optional.empty(), 1, 3000, List.of(Takes.OUTSIDE)),
                                new Instrument(
                                        "jaws", "long jaws", Optional.empty(), 0.05, 150, List.of(Takes.OUTSIDE))),
                        List.of(new ClashHours(Stage.ON_PAPER, 1, 1), new ClashHours(Stage.AFTER_ASSEMBLY, 10, 12))));
    }

    private static List<String> lines(Dimension memory) {
        MeasureAnswer answer = new MeasureAnswer(
                roof(memory).fitCase(),
                new MeasureView(Optional.empty(), 10),
                all -> roof(all.get(0).to()).fitCase().catalog(),
                Halt.NEVER);
        StringWriter text = new StringWriter();
        MeasureText paper = new MeasureText(
                new PrintWriter(text), new Origin("program", "catalogue", "brief", List.of()), Ink.PLAIN);
        paper.begin();
        assertThat(paper.add(answer)).isTrue();
        paper.end();
        return text.toString().lines().toList();
    }

    @Test
    void saysWhatToDoFirst() {
        List<String> lines = lines(mm(30, 2));
        assertThat(String.join(" ", lines).replaceAll(" +", " "))
                .startsWith(
                        "MEASURE Measure first: the module in its socket, face of the board to its top"
                                + " (memory.height_mm). 4 layouts hang on it: 4 would die, 0 come alive. A reading avoids about ")
                .contains(" of regret. Tape is not good enough: take the long jaws (+-0.05 mm). chassis (chassis)."
                        + " Complete: 4 layouts fit.");
        assertThat(lines)
                .contains(
                        "1  memory.height_mm, 30 +-2 mm, measured",
                        "   where:   the module in its socket, face of the board to its top",
                        "   with:    tape is not good enough: take the long jaws (+-0.05 mm)",
                        "   changes: 4 layouts hang on it: 4 would die, 0 come alive",
                        "   regret:  about 49 EUR avoided",
                        "- {of: memory, dimension: height_mm, value_mm: , instrument: jaws, date: }")
                .allMatch(line -> line.length() <= 100);
    }

    @Test
    void saysWhatNobodyKnowsBeforeAllElse() {
        assertThat(String.join(" ", lines(Dimension.UNKNOWN)).replaceAll(" +", " "))
                .startsWith("MEASURE Measure first: the module in its socket, face of the board to its top"
                        + " (memory.height_mm), which nobody knows. 4 layouts wait for it, for 4 it is the only one."
                        + " chassis (chassis). Complete: nothing fits, 4 wait for a measurement.");
    }

    @Test
    void saysSoWhereNothingNeedsMeasuring() {
        assertThat(lines(mm(30, 0)).get(0))
                .isEqualTo("MEASURE  Nothing needs measuring: every margin is sure, over 99.9 %.");
    }
}
