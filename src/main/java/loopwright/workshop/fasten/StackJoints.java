package loopwright.workshop.fasten;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.part.Cover;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.Radiator;
import loopwright.catalog.standard.Fastening;
import loopwright.catalog.standard.Fastening.SeatMaterial;
import loopwright.fit.Arrangement;
import loopwright.fit.FitCase;
import loopwright.fit.Layout.Stack;
import loopwright.fit.ModSet;
import loopwright.quantity.Dimension;
import loopwright.quantity.Known;
import loopwright.workshop.fasten.Joint.Count;
import loopwright.workshop.fasten.Joint.Holding;
import loopwright.workshop.finish.PaintedParts;

/**
 * The joints of one stack, as its arrangement has them.
 *
 * <p>The bolts that hold a radiator run from the outermost layer that is bolted to it: through sheet, gasket and fans, or,
 * where the fans are in a raised cover, from the fans through the sheet. A radiator in a cover is held from inside, through
 * the fans under the panel. Fans at the far face have screws of their own.
 *
 * @param radiator absent for a bare row of fans
 */
record StackJoints(FitCase fitCase, Stack stack, ModSet mods, Optional<Radiator> radiator, Fan fan) {

    /** The joints, and what to look at at each of them. */
    record Noted(Joint joint, List<String> warnings) {
        Noted {
            warnings = List.copyOf(warnings);
        }
    }

    List<Noted> all(PaintedParts painted) {
        SeatSheet sheet = SeatSheet.of(fitCase, stack, mods, painted);
        List<Noted> out = new ArrayList<>();
        out.add(new Noted(radiator.isPresent() ? main(sheet) : bare(sheet), sheet.warnings()));
        Arrangement arrangement = stack.shape().arrangement();
        if (farFans(arrangement)) {
            out.add(new Noted(far(), List.of()));
        }
        coverJoint(painted).ifPresent(c -> out.add(new Noted(c, List.of())));
        return out;
    }

    private static boolean farFans(Arrangement arrangement) {
        return switch (arrangement) {
            case PULL, PUSH_PULL, COVER_PUSH_PULL -> true;
            case PUSH, COVER_PUSH, COVER_RADIATOR, FANS_ONLY -> false;
        };
    }

    private Clamped fans() {
        return new Clamped("fan", fan.frame().thicknessMm());
    }

    private Joint main(SeatSheet sheet) {
        List<Clamped> layers = new ArrayList<>();
        switch (stack.shape().arrangement()) {
            case PUSH, PUSH_PULL -> {
                layers.addAll(sheet.outsideIn());
                layers.add(fans());
            }
            case PULL -> layers.addAll(sheet.outsideIn());
            case COVER_PUSH, COVER_PUSH_PULL -> {
                layers.add(fans());
                layers.addAll(sheet.layers());
                sheet.gasket().ifPresent(layers::add);
            }
            case COVER_RADIATOR -> {
                layers.add(fans());
                sheet.gasket().ifPresent(layers::add);
                layers.addAll(sheet.layers());
            }
            case FANS_ONLY -> throw new IllegalStateException("a bare row of fans holds no radiator");
        }
        List<String> frees = new ArrayList<>();
        layers.stream()
                .map(Clamped::name)
                .filter(n -> n.equals("grille") || n.equals("fan") || n.equals("insert panel"))
                .forEach(frees::add);
        frees.add("radiator");
        return joint(Holding.RADIATOR, layers, radiatorSeat(), frees, Count.ofBody(fanCount()));
    }

    private int fanCount() {
        return stack.shape().pattern().fans();
    }

    private Joint far() {
        return joint(Holding.FAR_FANS, List.of(fans()), radiatorSeat(), List.of("fan"), Count.ofFans(fanCount()));
    }

    private Joint bare(SeatSheet sheet) {
        Fastening.FanFrame frame = fitCase.catalog().practice().fastening().fan();
        int wholeHmm = fan.frame().thicknessMm().valueHmm();
        Dimension flange = atMost(frame.flangeMm(), wholeHmm);
        Dimension behind = atMost(frame.behindFlangeMm(), wholeHmm - flange.valueHmm());
        ThreadSeat seat = new ThreadSeat(frame.thread(), SeatMaterial.PLASTIC, flange, behind, "blades");
        List<String> frees = sheet.grille().isPresent() ? List.of("grille", "fan") : List.of("fan");
        return joint(Holding.BARE_FANS, sheet.outsideIn(), seat, frees, Count.ofFans(fanCount()));
    }

    private static Dimension atMost(Dimension length, int mostHmm) {
        return length.valueHmm() <= mostHmm ? length : new Dimension(mostHmm, length.plusMinusHmm(), Known.DATASHEET);
    }

    /** Rails of copper and brass radiators are taken to be steel: common practice. */
    private ThreadSeat radiatorSeat() {
        Radiator part = radiator.orElseThrow();
        Radiator.Seat seat = part.body().seat();
        SeatMaterial material = switch (part.ports().metal()) {
            case COPPER -> SeatMaterial.STEEL;
            case ALUMINIUM -> SeatMaterial.ALUMINIUM;
        };
        return new ThreadSeat(seat.thread(), material, seat.flangeMm(), seat.depthToTubeMm(), "first tube");
    }

    private Optional<Joint> coverJoint(PaintedParts painted) {
        return fitCase.openings().cover(stack.frame().mount(), mods).map(raised -> {
            Cover cover = fitCase.catalog().part(Cover.class, raised.cover());
            List<Clamped> layers = new ArrayList<>();
            layers.add(new Clamped("cover flange", cover.body().skinMm()));
            painted.filmHmm(cover.id()).ifPresent(film -> layers.add(Clamped.exactly("paint, two faces", film)));
            Fastening.RivetNut nut = fitCase.catalog().practice().fastening().rivetNut();
            ThreadSeat seat = new ThreadSeat(
                    cover.fixing().thread(), SeatMaterial.STEEL, nut.threadMm(), nut.behindMm(), "what is behind");
            int screws = cover.fixing().screws();
            return joint(Holding.COVER, layers, seat, List.of("cover"), new Count(screws, screws));
        });
    }

    private Joint joint(Holding holding, List<Clamped> layers, ThreadSeat seat, List<String> frees, Count count) {
        return new Joint(stack.frame().mount().id(), holding, layers, seat, frees, count);
    }
}
