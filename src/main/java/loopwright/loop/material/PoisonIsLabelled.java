package loopwright.loop.material;

/** Ethylene glycol is a poison: labelled, kept away, disposed of by who may. */
final class PoisonIsLabelled implements MaterialRule {

    @Override
    public String id() {
        return "material.poison";
    }

    @Override
    public String source() {
        return "toxicity of ethylene glycol as veterinary poison lines tell it, read in secondary texts; local rules and the maker's sheet come first";
    }

    @Override
    public Said check(LoopMaterials loop) {
        return switch (loop.coolant().base()) {
            case ETHYLENE_GLYCOL ->
                Said.warn(loop.coolant().id() + " has ethylene glycol: sweet and deadly, a teaspoon may kill a cat."
                        + " Label machine and bottle, keep from children and pets; waste to whom local rules name."
                        + " Propylene glycol is much less poisonous");
            case PROPYLENE_GLYCOL ->
                Said.ok("propylene glycol: little poisonous, yet not for the drain; local waste rules");
            case WATER -> Said.ok("no glycol; what held inhibitor or copper is not for the drain: local waste rules");
        };
    }
}
