using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Jobs;

/// <summary>
/// Another way to do a job, to be priced beside it: some fixtures with another colour, system or options, or some left out. What it does
/// not name stays as in the job.
/// </summary>
/// <example><code>
/// JobAlternative without = new() { Id = "no-sink", Name = "without the sink", LeftOut = ["sink"] };
/// </code></example>
public sealed record JobAlternative
{

    /// <summary>Identity, unique within the job.</summary>
    /// <exception cref="ArgumentException">Empty, longer than 100 characters, or with a slash.</exception>
    public required string Id { get; init => field = Guard.Id(value); }

    /// <summary>What the customer reads; the identity unless given.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public string Name { get => field ?? Id; init => field = Guard.Named(value); }

    /// <summary>Entries that take the place of the job's fixtures with the same identifier; none unless given.</summary>
    /// <exception cref="ArgumentException">An entry is missing, or two have one identifier.</exception>
    public IReadOnlyList<FixtureJob> Fixtures
    {
        get;
        init => field = Unique.Ids(Guard.List(value), fixture => fixture.Id, nameof(Fixtures));
    }
    = ValueList<FixtureJob>.Empty;

    /// <summary>Identifiers of the job's fixtures that are not done; none unless given.</summary>
    /// <exception cref="ArgumentException">An entry is no identity, or stands twice.</exception>
    public IReadOnlyList<string> LeftOut
    {
        get;
        init => field = Unique.Ids(new ValueList<string>(Guard.List(value).Select(id => Guard.Id(id, nameof(LeftOut)))),
            id => id, nameof(LeftOut));
    }
    = ValueList<string>.Empty;

    /// <summary>The job done this way, with the name of the alternative behind its own and without alternatives of its own.</summary>
    /// <param name="job">The job.</param>
    /// <returns>The job with those fixtures, in its own order.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="job"/> is missing.</exception>
    /// <exception cref="ArgumentException">It does not fit the job: see <see cref="JobPlan.Objections"/> of the job's plan.</exception>
    public Job Of(Job job)
    {
        Guard.NotNull(job);
        if (Misfits(job).FirstOrDefault() is PlanObjection misfit)
        {
            throw new ArgumentException(misfit.ToString(), nameof(job));
        }

        return job with
        {
            Name = job.Name + ", " + Name,
            Fixtures = [.. job.Fixtures.Where(fixture => !LeftOut.Contains(fixture.Id)).Select(fixture => Fixtures.FirstOrDefault(one =>
                one.Id == fixture.Id) ?? fixture)],
            Extras = [.. job.Extras.Where(extra => extra.Fixture is null || !LeftOut.Contains(extra.Fixture))],
            Alternatives = [],
        };
    }

    /// <summary>The name.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Name;

    /// <summary>What of it does not fit a job, by fixture; without one where it is the whole.</summary>
    internal IEnumerable<PlanObjection> Misfits(Job job)
    {
        IEnumerable<string> changed = Fixtures.Select(fixture => fixture.Id);
        bool IsThere(string id) => job.Fixtures.Any(fixture => fixture.Id == id);
        return
        [
            .. changed.Concat(LeftOut).Where(id => !IsThere(id)).Distinct().Select(id =>
                Misfit("/" + id, " names the fixture '" + id + "', which the job does not have.")),
            .. changed.Where(id => LeftOut.Contains(id) && IsThere(id)).Select(id =>
                Misfit("/" + id, " leaves the fixture '" + id + "' out and changes it too.")),
            .. job.Fixtures.All(fixture => LeftOut.Contains(fixture.Id))
                ? [Misfit(string.Empty, " leaves every fixture out.")] : (PlanObjection[])[],
        ];
    }

    private PlanObjection Misfit(string place, string what) =>
        new(ObjectionKind.Input, Id, "alternative" + place, "The alternative '" + Id + "'" + what);
}
