using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Pictures;

namespace Refinish.Samples.QuoteService;

/// <summary>
/// The pictures that go with a quote, by name. What the job costs the shop is not for the customer, so there is no picture of it.
/// </summary>
internal static class QuotePictures
{
    public static IReadOnlyList<(string Name, Picture Picture)> Of(Quote quote) =>
    [
        .. quote.Offer is { } offer ? [("price", new QuotePicture(offer))] : Array.Empty<(string, Picture)>(),
        ("timeline", new TimelinePicture(quote.Plan)),
        .. quote.Plan.Job.Fixtures.Select(fixture => ("fixture-" + fixture.Id, (Picture)new FixturePicture(fixture.Fixture, fixture.Name))),
    ];

    public static Picture? Find(Quote quote, string name) => Of(quote).Where(picture => picture.Name == name)
        .Select(picture => picture.Picture).FirstOrDefault();
}
