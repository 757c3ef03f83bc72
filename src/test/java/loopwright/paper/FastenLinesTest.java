package loopwright.paper;

import static loopwright.testing.Mm.mm;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import loopwright.catalog.basis.Purchase;
import loopwright.catalog.part.Screw;
import loopwright.catalog.part.ScrewThread;
import loopwright.catalog.standard.Fastening.SeatMaterial;
import loopwright.workshop.fasten.Clamped;
import loopwright.workshop.fasten.Fasteners;
import loopwright.workshop.fasten.FixedSet;
import loopwright.workshop.fasten.Joint;
import loopwright.workshop.fasten.LengthChoice;
import loopwright.workshop.fasten.LengthChoice.Padded;
import loopwright.workshop.fasten.LengthChoice.Refused;
import loopwright.workshop.fasten.LengthWindow;
import loopwright.workshop.fasten.ScrewSet;
import loopwright.workshop.fasten.ThreadSeat;
import org.junit.jupiter.api.Test;

/** What is said of screws: panel 1.2, gasket 1.0, fan 25, flange 1.2, 4 to the first tube. */
class FastenLinesTest {

    private static final Joint JOINT = new Joint(
            "roof",
            Joint.Holding.RADIATOR,
            List.of(
                    Clamped.exactly("panel", 120),
                    Clamped.exactly("gasket, squeezed", 100),
                    Clamped.exactly("fan", 2500)),
            new ThreadSeat(ScrewThread.M3, SeatMaterial.STEEL, mm(1.2), mm(4), "first tube"),
            List.of("fan", "radiator"),
            new Joint.Count(8, 6));

    private static final LengthWindow WINDOW = new LengthWindow(2720, 2840, 3140, 3240, 0);

    private static Screw screw(double lengthMm) {
        return new Screw(
                "m3-" + lengthMm,
                "M3",
                Optional.empty(),
                new Purchase(5, 2),
                ScrewThread.M3,
                Screw.Head.PAN,
                mm(lengthMm));
    }

    private static ScrewSet set(LengthChoice choice) {
        return new ScrewSet(JOINT, 340, WINDOW, choice, List.of());
    }

    @Test
    void aRefusalSaysWhatIsNearest() {
        Refused refused = new Refused(Optional.of(screw(28)), Optional.of(screw(35)), Optional.empty());
        assertThat(FastenLines.refusal(set(refused)))
                .contains("roof radiator: no M3 of stock is 28.4 to 31.4 mm; 28 does not hold; 35 goes 2.6 mm past the"
                        + " first tube; washers do not help.");
    }

    @Test
    void aRefusalSaysWhichWasherHelps() {
        Refused refused =
                new Refused(Optional.empty(), Optional.of(screw(32)), Optional.of(new Padded(screw(32), 2, 50)));
        assertThat(FastenLines.refusal(set(refused)))
                .contains(
                        "roof radiator: no M3 of stock is 28.4 to 31.4 mm; 32 is 0.6 mm over what is safe; 32 fits with"
                                + " 2 washers of 0.5 mm under the head.");
    }

    @Test
    void whatFitsIsARow() {
        ScrewSet fits = set(new LengthChoice.Fits(screw(30), List.of()));
        FixedSet board = new FixedSet("board", ScrewThread.UNC_6_32, 600, 4, Optional.empty(), "");
        Fasteners screws = new Fasteners(List.of(fits), List.of(board), List.of(), Map.of("m3-30.0", 8));
        assertThat(FastenLines.refusal(fits)).isEmpty();
        assertThat(FastenLines.rows(screws))
                .containsExactly(List.of(
                        "roof",
                        "radiator",
                        "8",
                        "6",
                        "M3 x 30",
                        "28.4-31.4",
                        "3.4",
                        "2.4 / 2.4",
                        "panel 1.2 + gasket, squeezed 1 + fan 25"));
        assertThat(FastenLines.fixedRows(screws)).containsExactly(List.of("board", "4", "6-32 x 6", "NOT IN STOCK."));
        assertThat(FastenLines.of(screws)).allMatch(line -> line.length() <= Lines.WIDTH);
        assertThat(FastenLines.of(screws)).contains("look:  roof radiator: undone, frees fan, radiator");
    }
}
