using System.Collections.Generic;
using System.Linq;
using Refinish.Jobs;
using Refinish.Pictures;

namespace Refinish.Samples.QuoteService;

/// <summary>
/// The pictures that go with a quote, by name. What the job costs the shop is not for the customer, so there is no picture of it.
/// </summary>
internal static class QuotePictures
{
    public static IReadOnlyList<(string Name, Picture Picture)> Of(JobPlan plan) =>
    [
        ("timeline", new TimelinePicture(plan)),
        .. plan.Job.Fixtures.Select(fixture => ("fixture-" + fixture.Id, (Picture)new FixturePicture(fixture.Fixture, fixture.Name))),
    ];

    public static Picture? Find(JobPlan plan, string name) => Of(plan).Where(picture => picture.Name == name)
        .Select(picture => picture.Picture).FirstOrDefault();
}
