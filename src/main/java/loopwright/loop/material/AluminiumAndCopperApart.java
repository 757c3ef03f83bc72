package loopwright.loop.material;

/** Radiators, blocks and tube of aluminium and of copper do not share a loop: the aluminium dissolves. */
final class AluminiumAndCopperApart implements MaterialRule {

    @Override
    public String id() {
        return "material.aluminium-copper";
    }

    @Override
    public String source() {
        return "MIL-STD-889, galvanic series (in sea water; from memory): aluminium is active to copper";
    }

    @Override
    public Said check(LoopMaterials loop) {
        String copper = loop.names(Wetted::isCopperAlloy)
                + (loop.hasCopperTube() ? ", tube " + loop.tube().id() : "");
        if (loop.hasAluminium() && loop.hasCopper()) {
            return Said.broken("aluminium (" + loop.names(w -> w == Wetted.ALUMINIUM) + ") and copper (" + copper
                    + ") in one loop: the aluminium dissolves and leaks follow");
        }
        return Said.ok("radiators and blocks all of " + (loop.hasAluminium() ? "aluminium" : "copper"));
    }
}
