using System.Collections.Generic;
using System.Linq;
using Refinish.Jobs;
using Refinish.Pictures;

namespace Refinish.Samples.QuoteService;

/// <summary>The pictures that go with a quote, by name.</summary>
internal static class QuotePictures
{
    public static IReadOnlyList<(string Name, Picture Picture)> Of(BathroomPlan plan) => [];

    public static Picture? Find(BathroomPlan plan, string name) => Of(plan).Where(picture => picture.Name == name).Select(picture => picture.Picture).FirstOrDefault();
}
