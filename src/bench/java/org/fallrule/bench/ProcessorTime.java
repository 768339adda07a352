package org.fallrule.bench;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.Collection;
import java.util.List;
import org.openjdk.jmh.infra.BenchmarkParams;
import org.openjdk.jmh.infra.IterationParams;
import org.openjdk.jmh.profile.InternalProfiler;
import org.openjdk.jmh.results.AggregationPolicy;
import org.openjdk.jmh.results.IterationResult;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.ScalarResult;

/**
 * Adds the processor time of an operation to each result, that of compiler and collector included, least of the iterations:
 * time by the clock says little on a machine that does other work beside.
 */
public final class ProcessorTime implements InternalProfiler {
    private final OperatingSystemMXBean system = ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);
    private long before;

    @Override
    public String getDescription() {
        return "Processor time of an operation";
    }

    @Override
    public void beforeIteration(BenchmarkParams benchmark, IterationParams iteration) {
        before = system.getProcessCpuTime();
    }

    @Override
    public Collection<? extends Result<?>> afterIteration(
            BenchmarkParams benchmark, IterationParams iteration, IterationResult result) {
        double milliseconds = (system.getProcessCpuTime() - before) / 1e6;
        return List.of(new ScalarResult(
                "processor", milliseconds / result.getMetadata().getAllOps(), "ms/op", AggregationPolicy.MIN));
    }
}
