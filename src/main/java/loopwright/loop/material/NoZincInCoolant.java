package loopwright.loop.material;

/** No zinc-plated fitting touches the coolant: the zinc goes into it. */
final class NoZincInCoolant implements MaterialRule {

    @Override
    public String id() {
        return "material.zinc-fitting";
    }

    @Override
    public String source() {
        return PRACTICE;
    }

    @Override
    public Said check(LoopMaterials loop) {
        String zinc = loop.fittings().ids(w -> w == Wetted.ZINC_PLATED);
        return zinc.isEmpty()
                ? Said.ok("no zinc-plated fitting among those that may be used")
                : new Said(
                        loop.fittings().bad(),
                        "zinc-plated: " + zinc + "; the plating goes into the coolant, "
                                + loop.fittings().instead());
    }
}
