package loopwright.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import loopwright.catalog.Catalog;
import loopwright.catalog.CatalogReader;
import loopwright.loop.Machine;
import loopwright.loop.MachineModel;
import loopwright.loop.MountSound;
import loopwright.loop.SoundPower;
import loopwright.loop.SteadyState;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;

/**
 * Full builds a second on one core: a machine put together, its air, coolant and temperatures solved, its sound added up.
 *
 * <p>Different machines are taken in turn; the model keeps the curves of parts, as in a ranking, and nothing of a machine.
 * After each iteration two figures are printed that JMH does not give: builds a second of this thread's processor time, which
 * other programs on the machine hardly disturb, and the heap still in use, which must not grow with the number of builds.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 6, time = 2)
@Fork(
        value = 2,
        jvmArgsAppend = {"-Xmx512m", "-XX:+UseSerialGC"})
public class LoopBenchmark {

    private static final long SEED = 20260101;
    private static final int MACHINES = 300;
    private static final int BYTES_PER_KB = 1000;
    private static final double NS_PER_S = 1e9;
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private final List<BenchMachines.Order> orders;
    private final MachineModel model;
    private int turn;
    private long builds;
    private long startNs;

    /** Reads the demo's catalogue and draws the machines. */
    public LoopBenchmark() {
        Catalog catalog = CatalogReader.read(Path.of("catalogs"));
        model = new MachineModel(catalog.practice(), BenchMachines.SITE);
        orders = new BenchMachines(catalog, SEED).draw(MACHINES);
    }

    /** Every machine finds its steady state, so that none is cheap by failing. */
    @Setup(Level.Trial)
    public void check() {
        for (BenchMachines.Order order : orders) {
            if (model.solve(order.machine()) instanceof SteadyState.None none) {
                throw new IllegalStateException("seed " + SEED + ": " + none.why() + " in " + order);
            }
        }
    }

    /** Starts the clock of this thread's processor time. */
    @Setup(Level.Iteration)
    public void start() {
        builds = 0;
        startNs = THREADS.getCurrentThreadCpuTime();
    }

    /** One build. */
    @Benchmark
    public void loop(Blackhole hole) {
        builds++;
        turn = turn + 1 == MACHINES ? 0 : turn + 1;
        Machine machine = orders.get(turn).machine();
        SoundPower sound = MountSound.of(machine.water().pump());
        for (Machine.FanMount mount : machine.mounts()) {
            sound = sound.plus(MountSound.of(mount));
        }
        hole.consume(model.solve(machine));
        hole.consume(sound);
    }

    /** Prints what JMH does not. */
    @TearDown(Level.Iteration)
    public void print() {
        double perS = builds * NS_PER_S / (THREADS.getCurrentThreadCpuTime() - startNs);
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        long usedKB = (runtime.totalMemory() - runtime.freeMemory()) / BYTES_PER_KB;
        System.out.printf(Locale.ROOT, "%.0f builds/s of processor time, %d kB in use; ", perS, usedKB);
    }
}
