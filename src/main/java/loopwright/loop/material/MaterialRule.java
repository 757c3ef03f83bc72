package loopwright.loop.material;

/** One thing that materials of a loop must bear. */
interface MaterialRule {

    /** Where rules without a published source come from. */
    String PRACTICE = "common practice, no source";

    /** Stable id. */
    String id();

    /** Where it comes from. */
    String source();

    /** What it says. */
    Said check(LoopMaterials loop);

    /** A verdict and its sentence. */
    record Said(MaterialVerdict verdict, String sentence) {
        static Said ok(String sentence) {
            return new Said(MaterialVerdict.OK, sentence);
        }

        static Said warn(String sentence) {
            return new Said(MaterialVerdict.WARN, sentence);
        }

        static Said broken(String sentence) {
            return new Said(MaterialVerdict.BROKEN, sentence);
        }

        static Said unknown(String sentence) {
            return new Said(MaterialVerdict.UNKNOWN, sentence);
        }
    }
}
