package loopwright.loop.material;

/** Fittings of aluminium stay out of loops with copper, and those of brass out of loops with aluminium. */
final class FittingsSuitTheMetals implements MaterialRule {

    @Override
    public String id() {
        return "material.fitting-metal";
    }

    @Override
    public String source() {
        return "MIL-STD-889, galvanic series (in sea water; from memory): aluminium is active to copper and brass";
    }

    @Override
    public Said check(LoopMaterials loop) {
        String aluminium = loop.fittings().ids(w -> w == Wetted.ALUMINIUM);
        if (!aluminium.isEmpty() && loop.hasCopper()) {
            return new Said(
                    loop.fittings().bad(),
                    "aluminium fittings (" + aluminium + ") beside copper dissolve: "
                            + loop.fittings().instead());
        }
        String brass = loop.fittings().ids(Wetted::isCopperAlloy);
        if (!brass.isEmpty() && loop.hasAluminium()) {
            return new Said(
                    loop.fittings().bad(),
                    "brass fittings (" + brass + ") beside aluminium ("
                            + loop.names(w -> w == Wetted.ALUMINIUM) + ") eat it: "
                            + loop.fittings().instead());
        }
        return Said.ok("fittings go with the metals of radiators and blocks");
    }
}
