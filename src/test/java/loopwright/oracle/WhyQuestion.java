package loopwright.oracle;

import java.util.List;
import loopwright.oracle.brute.WhyWish;

/** A case and what is wished in it; without any wish, a radiator on some mount. */
public record WhyQuestion(OracleCase question, List<WhyWish> wishes) {}
