package loopwright.loop.material;

/** A biocide, or enough glycol, keeps growth down. */
final class SomethingKeepsGrowthDown implements MaterialRule {

    @Override
    public String id() {
        return "material.growth";
    }

    @Override
    public String source() {
        return PRACTICE;
    }

    @Override
    public Said check(LoopMaterials loop) {
        boolean added = !loop.addedBiocides().isEmpty();
        double glycol = loop.coolant()
                .glycolMassPercent()
                .or(() -> loop.coolant().glycolVolumePercent())
                .orElse(0.0);
        if (added
                || loop.coolant()
                        .additives()
                        .filter(a -> !a.biocides().isEmpty())
                        .isPresent()) {
            return Said.ok("a biocide keeps growth down");
        }
        if (glycol >= loop.practice().growthGlycolPercent()) {
            return Said.ok("no biocide, but little grows in so much glycol");
        }
        return loop.coolant().additives().isPresent()
                ? Said.warn("no biocide at all in " + loop.coolant().id() + ": something will grow; add one")
                : Said.unknown("nobody says whether " + loop.coolant().id() + " has a biocide: ask its maker");
    }
}
