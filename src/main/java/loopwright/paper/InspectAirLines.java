package loopwright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import loopwright.answer.Inspection;
import loopwright.answer.Inspection.MountFlow;
import loopwright.loop.Machine;
import loopwright.loop.Steady;
import loopwright.loop.air.AirDirection;
import loopwright.quantity.Units;

/** What the air of a build does. */
final class InspectAirLines {

    private InspectAirLines() {}

    static List<String> of(Inspection in) {
        List<String> out = new ArrayList<>(mounts(in));
        Steady state = in.state();
        double fanIn = Units.m3PerH(state.air().fanInM3PerS());
        double fanOut = Units.m3PerH(state.air().fanOutM3PerS());
        out.addAll(Lines.wrap(
                "",
                "Fans draw in " + Mm.rounded(fanIn, 0) + " m3/h and blow out " + Mm.rounded(fanOut, 0)
                        + " m3/h: " + balance(fanIn, fanOut) + ", inside "
                        + Mm.rounded(Math.abs(state.air().insidePa()), 2) + " Pa "
                        + (state.air().insidePa() >= 0 ? "over" : "below") + " the room. Through openings: "
                        + in.vents().stream()
                                .map(v -> v.name() + " " + Mm.rounded(Math.abs(v.outM3PerH()), 0)
                                        + (v.outM3PerH() >= 0 ? " out" : " in"))
                                .collect(Collectors.joining(", "))
                        + ". Air inside " + Mm.rounded(state.caseC(), 1) + " +-"
                        + Mm.rounded(in.caseBand().halfK(), 1) + " C."));
        out.add("");
        out.addAll(radiators(in));
        return out;
    }

    private static String balance(double in, double out) {
        double more = Math.abs(in - out) / Math.max(Math.max(in, out), 1e-9);
        String percent = Mm.rounded(100 * more, 0).toPlainString();
        return in >= out ? percent + " % more in" : percent + " % more out";
    }

    private static List<String> mounts(Inspection in) {
        Columns table = Columns.headed("mount", "blows", "m3/h", "fans Pa", "panel and path Pa", "core Pa", "fans");
        for (MountFlow flow : in.airflows()) {
            Machine.Fans fans = flow.mount().fans();
            table.row(
                    flow.mount().mount(),
                    flow.mount().direction() == AirDirection.IN ? "in" : "out",
                    Mm.rounded(flow.flowM3PerH(), 0).toPlainString(),
                    Mm.rounded(flow.fanPa(), 1).toPlainString(),
                    Mm.rounded(flow.pathPa(), 1).toPlainString(),
                    Mm.rounded(flow.corePa(), 1).toPlainString(),
                    fans.row() * fans.layers() + " " + fans.fan().id() + " at "
                            + Mm.rounded(fans.duty().percent(), 0) + " %" + (flow.stalls() ? ", STALLED" : ""));
        }
        return table.lines("");
    }

    private static List<String> radiators(Inspection in) {
        Columns table = Columns.headed(
                "radiator", "effect.", "UA W/K", "W at 10 K", "heat W", "share %", "air in C", "air out C", "part");
        double whole = in.state().radiators().stream()
                .mapToDouble(Steady.RadiatorState::heatW)
                .sum();
        List<Machine.FanMount> mounts = in.machine().mounts().stream()
                .filter(m -> m.radiator().isPresent())
                .toList();
        for (int i = 0; i < mounts.size(); i++) {
            Steady.RadiatorState radiator = in.state().radiators().get(i);
            Machine.RadiatorAt at = mounts.get(i).radiator().orElseThrow();
            double factor = in.model().core(at.radiator()).calibration();
            table.row(
                    mounts.get(i).mount(),
                    Mm.rounded(radiator.effectiveness(), 3).toPlainString(),
                    Mm.rounded(radiator.conductanceUAWPerK(), 1).toPlainString(),
                    Mm.rounded(10 * radiator.meanConductanceWPerK(), 0).toPlainString(),
                    Mm.rounded(radiator.heatW(), 0).toPlainString(),
                    Mm.rounded(100 * radiator.heatW() / whole, 0).toPlainString(),
                    Mm.rounded(radiator.inletC(), 1).toPlainString(),
                    Mm.rounded(radiator.outletC(), 1).toPlainString(),
                    at.radiator().id()
                            + (in.model().core(at.radiator()).isMeasured()
                                    ? ", measured: factor " + Mm.rounded(factor, 3)
                                    : ""));
        }
        return table.lines("");
    }
}
