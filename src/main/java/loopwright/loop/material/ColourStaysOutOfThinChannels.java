package loopwright.loop.material;

import java.util.function.Predicate;
import java.util.stream.Collectors;
import loopwright.catalog.part.Coolant;

/** Particles clog thin channels, dye stains clear tube. */
final class ColourStaysOutOfThinChannels implements MaterialRule {

    @Override
    public String id() {
        return "material.colour";
    }

    @Override
    public String source() {
        return PRACTICE;
    }

    @Override
    public Said check(LoopMaterials loop) {
        if (loop.coolant().additives().isEmpty()) {
            return Said.unknown("nobody says whether " + loop.coolant().id() + " is coloured");
        }
        Coolant.Tint tint = loop.coolant().additives().orElseThrow().tint();
        if (tint == Coolant.Tint.CLEAR) {
            return Said.ok("nothing colours the coolant");
        }
        if (tint == Coolant.Tint.DYED) {
            return Said.warn("dye in " + loop.coolant().id()
                    + " stains clear tube and acrylic within weeks to months: test a drop");
        }
        String thin = blocks(
                loop,
                p -> p.channelMm().orElse(Double.MAX_VALUE) < loop.practice().thinChannelMm());
        if (!thin.isEmpty()) {
            String what = (tint == Coolant.Tint.GLITTER ? "flakes" : "particles") + " of "
                    + loop.coolant().id();
            return new Said(
                    tint == Coolant.Tint.GLITTER ? MaterialVerdict.BROKEN : MaterialVerdict.WARN,
                    what + " clog channels below " + loop.practice().thinChannelMm() + " mm: " + thin);
        }
        String unsaid = blocks(loop, p -> p.channelMm().isEmpty());
        return unsaid.isEmpty()
                ? Said.ok("no channel is thin enough to clog")
                : Said.unknown("nobody says how wide the channels are: " + unsaid);
    }

    private static String blocks(LoopMaterials loop, Predicate<LoopMaterials.Piece> which) {
        return loop.pieces().stream()
                .filter(p -> p.block() && which.test(p))
                .map(LoopMaterials.Piece::name)
                .collect(Collectors.joining(", "));
    }
}
