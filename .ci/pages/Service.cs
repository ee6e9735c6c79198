using System;
using System.Diagnostics;
using System.Net.Http;
using System.Threading.Tasks;

namespace Refinish.Pages;

/// <summary>A service as its own process on a free port of the loopback.</summary>
internal sealed class Service : IAsyncDisposable
{
    private readonly Process process;

    private Service(Process process, Uri address)
    {
        this.process = process;
        Client = new HttpClient { BaseAddress = address };
    }

    public HttpClient Client { get; }

    public static async Task<Service> Start(string folder, string program, params (string Name, string Value)[] settings)
    {
        ProcessStartInfo start = new("dotnet", [program, "--urls", "http://127.0.0.1:0"]) { WorkingDirectory = folder, RedirectStandardOutput = true };
        foreach ((string name, string value) in settings)
        {
            start.Environment[name] = value;
        }

        // All that it prints is read, so that it never waits for a reader.
        Process process = Process.Start(start)!;
        TaskCompletionSource<Uri> listening = new();
        process.OutputDataReceived += (_, printed) =>
        {
            const string words = "Now listening on: ";
            if (printed.Data is not string line)
            {
                listening.TrySetException(new CheckFailed(program + " ended before it listened"));
            }
            else if (line.IndexOf(words, StringComparison.Ordinal) is >= 0 and int at)
            {
                listening.TrySetResult(new Uri(line[(at + words.Length)..]));
            }
        };
        process.BeginOutputReadLine();
        return new Service(process, await listening.Task.WaitAsync(TimeSpan.FromMinutes(1)));
    }

    public async ValueTask DisposeAsync()
    {
        Client.Dispose();
        process.Kill();
        await process.WaitForExitAsync();
        process.Dispose();
    }
}
