using System;
using System.Globalization;
using System.IO;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.Hosting;
using Refinish.Jobs;
using Refinish.Json;

namespace Refinish.Samples.QuoteService;

/// <summary>
/// Quotes in a file, as plan documents: the job, which everything follows from, and the results, which are held against it when it is read
/// again.
/// </summary>
internal sealed class QuoteStore(IConfiguration configuration, IHostEnvironment environment, TimeProvider time)
{
    private readonly string connection = new SqliteConnectionStringBuilder
    {
        DataSource = Path.Combine(environment.ContentRootPath, configuration["Quotes:File"] ?? "quotes.db"),
    }.ToString();

    public void Create() => Run(
        "CREATE TABLE IF NOT EXISTS quotes (id TEXT PRIMARY KEY, stored TEXT NOT NULL, [plan] TEXT NOT NULL) STRICT",
        command => command.ExecuteNonQuery());

    public Quote Add(Job job)
    {
        // Whoever knows the number may read the quote, so it is not to be guessed.
        Guid id = Guid.NewGuid();
        DateTimeOffset now = time.GetUtcNow();
        QuoteTerms terms = job.Terms with { Number = id.ToString("N")[..8], Issued = now.ToOffset(OurShop.Clock) };
        Quote quote = new(id, now, (job with { Id = "quote-" + id, Terms = terms }).Plan(), []);
        Run("INSERT INTO quotes (id, stored, [plan]) VALUES ($id, $stored, $plan)", command =>
        {
            command.Parameters.AddWithValue("$id", quote.Id.ToString());
            command.Parameters.AddWithValue("$stored", quote.Stored.ToString("O", CultureInfo.InvariantCulture));
            command.Parameters.AddWithValue("$plan", PlanJson.Write(quote.Plan));
            return command.ExecuteNonQuery();
        });
        return quote;
    }

    public Quote? Find(Guid id) => Run("SELECT stored, [plan] FROM quotes WHERE id = $id", command =>
    {
        command.Parameters.AddWithValue("$id", id.ToString());
        using SqliteDataReader row = command.ExecuteReader();
        if (!row.Read())
        {
            return null;
        }

        StoredPlan again = PlanJson.Read(row.GetString(1));
        return new Quote(id, DateTimeOffset.ParseExact(row.GetString(0), "O", CultureInfo.InvariantCulture), again.Plan, again.Differences,
            again.Changes);
    });

    private T Run<T>(string statement, Func<SqliteCommand, T> run)
    {
        using SqliteConnection open = new(connection);
        open.Open();
        using SqliteCommand command = open.CreateCommand();
        command.CommandText = statement;
        return run(command);
    }
}
