package loopwright.loop.material;

import loopwright.catalog.part.Tube;

/** Clear soft tube gives its plasticiser to the coolant; black rubber does not. */
final class SoftTubeKeepsItsPlasticiser implements MaterialRule {

    @Override
    public String id() {
        return "material.plasticiser";
    }

    @Override
    public String source() {
        return PRACTICE + "; months from memory";
    }

    @Override
    public Said check(LoopMaterials loop) {
        if (loop.tube().kind() == Tube.Kind.RIGID) {
            return Said.ok("rigid tube has no plasticiser");
        }
        if (loop.tube().material().isEmpty()) {
            return Said.unknown("nobody says what " + loop.tube().id() + " is made of");
        }
        return loop.tube().material().orElseThrow() == Tube.Material.CLEAR_PVC
                ? Said.warn("clear soft tube (" + loop.tube().id()
                        + ") gives off plasticiser: cloudy in 3 to 12 months, filter and blocks to be looked at then")
                : Said.ok(loop.tube().id() + " has no plasticiser to give");
    }
}
