package loopwright.paper;

import java.util.ArrayList;
import java.util.List;
import loopwright.answer.Inspection;
import loopwright.loop.Steady;
import loopwright.quantity.Units;

/** Flow, pressure and temperature round the loop of a build. */
final class InspectLoopLines {

    private InspectLoopLines() {}

    static List<String> of(Inspection in) {
        Steady state = in.state();
        Columns table = Columns.headed("in loop order", "L/min", "kPa", "share %", "in C", "out C", "rise K");
        for (Steady.Stop stop : state.stops()) {
            table.row(
                    stop.name(),
                    Mm.rounded(Units.lPerMin(stop.flowM3PerS()), 2).toPlainString(),
                    Mm.rounded(stop.lossPa() / Units.PA_PER_KPA, 2).toPlainString(),
                    Mm.rounded(100 * stop.lossPa() / state.water().headPa(), 0).toPlainString(),
                    Mm.rounded(stop.inC(), 2).toPlainString(),
                    Mm.rounded(stop.outC(), 2).toPlainString(),
                    Mm.rounded(stop.outC() - stop.inC(), 2).toPlainString());
        }
        List<String> out = new ArrayList<>(table.lines(""));
        out.addAll(Lines.wrap(
                "",
                in.machine().water().pump().pump().title() + " at "
                        + Mm.rounded(in.machine().water().pump().duty().percent(), 0) + " %: "
                        + Mm.rounded(Units.lPerMin(state.water().flowM3PerS()), 2) + " L/min against "
                        + Mm.rounded(state.water().headPa() / Units.PA_PER_KPA, 1) + " kPa with "
                        + in.machine().water().coolant().id() + " (freezes at "
                        + Mm.rounded(
                                in.model()
                                        .liquid(in.machine().water().coolant())
                                        .freezingC(),
                                0)
                        + " C). Heat in less heat out: "
                        + String.format(
                                java.util.Locale.ROOT, "%.0e", state.water().residual())
                        + " of the load. Runs and fittings as rank reckons with them; RUNS has them planned."));
        return out;
    }
}
