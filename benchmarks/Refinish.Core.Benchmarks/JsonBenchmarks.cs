using System.Buffers;
using System.Text.Json;
using BenchmarkDotNet.Attributes;
using Refinish.Jobs;
using Refinish.Json;
using Refinish.Samples.BathroomJob;

namespace Refinish.Benchmarks;

/// <summary>
/// The guesthouse as a document of about 100 KB. The peer is the platform's own reader and writer on the same text, which knows no units
/// and checks nothing.
/// </summary>
[MemoryDiagnoser]
public class JsonBenchmarks
{
    private readonly Job job = Scenario.Guesthouse();
    private readonly JobPlan plan = Scenario.Guesthouse().Plan();
    private readonly ArrayBufferWriter<byte> bytes = new(1 << 18);
    private readonly byte[] text = System.Text.Encoding.UTF8.GetBytes(JobJson.Write(Scenario.Guesthouse(),
        new JsonLayout { IsIndented = false }));

    [Benchmark(Baseline = true)]
    public int ParseAlone()
    {
        using JsonDocument document = JsonDocument.Parse(text);
        return document.RootElement.GetProperty("fixtures").GetArrayLength();
    }

    [Benchmark]
    public Job Read() => JobJson.Read(text);

    [Benchmark]
    public long CopyAlone()
    {
        using JsonDocument document = JsonDocument.Parse(text);
        using Utf8JsonWriter json = Fresh();
        document.RootElement.WriteTo(json);
        return json.BytesCommitted + json.BytesPending;
    }

    [Benchmark]
    public long Write()
    {
        using Utf8JsonWriter json = Fresh();
        JobJson.Write(json, job);
        return json.BytesCommitted + json.BytesPending;
    }

    [Benchmark]
    public long WritePlan()
    {
        using Utf8JsonWriter json = Fresh();
        PlanJson.Write(json, plan);
        return json.BytesCommitted + json.BytesPending;
    }

    private Utf8JsonWriter Fresh()
    {
        bytes.ResetWrittenCount();
        return new Utf8JsonWriter(bytes);
    }
}
