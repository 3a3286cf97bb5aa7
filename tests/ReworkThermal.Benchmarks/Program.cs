using BenchmarkDotNet.Reports;
using BenchmarkDotNet.Running;
using ReworkThermal.Benchmarks;

if (args is ["heat-comparison"])
{
    return HeatComparison.Print();
}

if (args is ["live-run"])
{
    return LiveBench.Print();
}

// A benchmark that fails to run must not pass unseen in a script.
List<Summary> summaries = [.. BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args)];
return summaries.Count > 0 && summaries.TrueForAll(s => !s.HasCriticalValidationErrors && s.Reports.All(r => r.Success)) ? 0 : 1;
