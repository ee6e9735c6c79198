using System.Globalization;
using System.Text;

namespace Refinish.Estimating;

/// <summary>What makes a line the same line in another run: its item and where and by whom it is done.</summary>
internal readonly record struct LineKey
{
    public LineKey(string item, string? fixture = null, string? room = null, string? worker = null, decimal? wage = null)
    {
        Item = item;
        Fixture = fixture;
        Room = room;
        Worker = worker;

        // A fixture has one id within a job: its room would add nothing.
        string?[] parts = [fixture, fixture is null ? room : null, worker, wage?.ToString("G29", CultureInfo.InvariantCulture)];
        StringBuilder id = new(item);
        int open = 0;
        foreach (string? part in parts)
        {
            open++;
            if (part is not null)
            {
                id.Append('/', open).Append(part);
                open = 0;
            }
        }

        Id = id.ToString();
    }

    public string Id { get; private init; }

    public string Item { get; }

    public string? Fixture { get; }

    public string? Room { get; }

    public string? Worker { get; }

    /// <summary>A line about another line: its tax.</summary>
    public static LineKey Of(string item, string line) => new(item) { Id = item + "/" + line };
}
