using BenchmarkDotNet.Running;

// dotnet run -c Release --project benchmarks/Refinish.Core.Benchmarks -- --filter '*'
BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
