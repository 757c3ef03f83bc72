package loopwright.answer;

import loopwright.catalog.brief.BriefLimits;
import loopwright.fit.FitCase;
import loopwright.loop.Machine;
import loopwright.loop.MachineModel;

/** Where a brief's machine stands. */
public final class Sites {

    private Sites() {}

    /** The physics at the brief's room and height. */
    public static MachineModel model(FitCase fitCase) {
        return inRoom(fitCase, fitCase.brief().limits().roomC());
    }

    /** The physics at the brief's height, in another room. */
    public static MachineModel inRoom(FitCase fitCase, double roomC) {
        BriefLimits limits = fitCase.brief().limits();
        double altitudeM =
                limits.heat().flatMap(BriefLimits.HeatLimits::altitudeM).orElse(0.0);
        return new MachineModel(fitCase.catalog().practice(), new Machine.Site(roomC, altitudeM));
    }
}
