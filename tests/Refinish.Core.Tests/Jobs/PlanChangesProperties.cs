using System;
using System.Linq;
using Refinish.Estimating;
using Refinish.Jobs;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Jobs;

/// <summary>What holds of the changes between any two plans.</summary>
public class PlanChangesProperties
{
    [Fact]
    [Evidence(Basis.Identity, "prices and costs of the changes add up to the difference of the totals, keys are unique, swapping negates: random pairs")]
    public void Changes_add_up_and_swap()
    {
        JobPlan[] tame = [.. Enumerable.Range(0, 25).Select(seed => RandomJobs.Tame(seed).Plan())];
        JobPlan[] wild = [.. Enumerable.Range(0, 25).Select(seed => RandomJobs.Wild(seed).Plan())];
        int priced = 0;
        for (int i = 0; i + 1 < tame.Length; i++)
        {
            priced += Check(tame[i], tame[i + 1]) ? 1 : 0;
            Check(wild[i], wild[i + 1]);
            Check(tame[i], wild[i]);
        }

        Assert.True(priced > 5, priced + " pairs with two prices");
    }

    [Fact]
    [Evidence(Basis.Identity, "a job against itself, and against itself with its lists turned round, has no change: random jobs")]
    public void The_order_of_lists_is_no_change()
    {
        for (int seed = 0; seed < 20; seed++)
        {
            Job job = RandomJobs.Wild(seed);
            JobPlan plan = job.Plan();
            Assert.True(PlanChanges.Between(plan, plan).IsEmpty);
            Job turned = job with
            {
                Fixtures = [.. job.Fixtures.Reverse()],
                Premises = job.Premises with { Rooms = [.. job.Premises.Rooms.Reverse()] },
                Shop = job.Shop with
                {
                    Prices = job.Shop.Prices with { Materials = [.. job.Shop.Prices.Materials.Reverse()], Options = [.. job.Shop.Prices.Options.Reverse()] },
                    Labour = [.. job.Shop.Labour.Reverse()],
                },
            };
            Assert.Equal([], PlanChanges.Between(plan, turned.Plan()).Inputs.Select(input => input.Path));
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "every property that a caller can set on a job, a fixture, a room, premises, a shop or a price book is compared")]
    public void Every_input_is_compared()
    {
        string[] compared = JobInputs.Compared;
        foreach (Type type in new[] { typeof(Job), typeof(FixtureJob), typeof(SiteRoom), typeof(Premises), typeof(QuoteTerms), typeof(Shop), typeof(PriceBook) })
        {
            foreach (System.Reflection.PropertyInfo property in type.GetProperties().Where(property => property.CanWrite))
            {
                string name = type.Name + "." + property.Name;
                Assert.True(compared.Contains(name, StringComparer.OrdinalIgnoreCase), name + " is not compared");
            }
        }
    }

    private static bool Check(JobPlan before, JobPlan after)
    {
        PlanChanges there = PlanChanges.Between(before, after);
        PlanChanges back = PlanChanges.Between(after, before);
        Assert.Equal(there.Changes.Count, there.Changes.Select(change => change.Key).Distinct().Count());
        Assert.Equal(there.Changes.Select(change => change.Key).OrderBy(key => key, StringComparer.Ordinal), back.Changes.Select(change => change.Key).OrderBy(key => key, StringComparer.Ordinal));
        foreach (PlanChange change in there.Changes)
        {
            PlanChange other = back.Changes.Single(one => one.Key == change.Key);
            Assert.Equal((-change.Price, -change.Cost, -change.Time), (other.Price, other.Cost, other.Time));
            Assert.Equal(change.Kind, other.Kind switch { ChangeKind.Added => ChangeKind.Removed, ChangeKind.Removed => ChangeKind.Added, _ => ChangeKind.Changed });
            Assert.NotEqual(ChangeSubject.Remainder, change.Subject);
            Assert.Equal(1, Count(change.Sentence(DisplayUnits.UsCustomary), change));
        }

        if (there.Total is not decimal total)
        {
            return false;
        }

        Assert.Equal(after.Price!.Total - before.Price!.Total, total);
        Assert.Equal(total, there.Changes.Sum(change => change.Price));

        // Every random shop pays 28 for a trip.
        Assert.Equal(28m * there.Trips!.Value, there.Changes.Where(change => change.Subject == ChangeSubject.Visits).Sum(change => change.Cost));
        Assert.Equal(after.Price.Cost - before.Price.Cost, there.Changes.Sum(change => change.Cost));
        PlanChanges seen = there.For(LineReader.Customer);
        Assert.Equal(total, seen.Changes.Sum(change => change.Price));
        Assert.All(seen.Changes, change => Assert.Equal((0m, 0), (change.Cost, change.Lines.Count)));
        Assert.Equal(seen.Changes.Count, seen.Changes.Select(change => change.Key).Distinct().Count());
        AgreesWithTheQuotes(seen, before.Quote, after.Quote);
        return true;
    }

    // Each item of the two quotes that differs is one change of just that amount, and nothing is left beside items, discount and taxes.
    private static void AgreesWithTheQuotes(PlanChanges seen, CustomerQuote? before, CustomerQuote? after)
    {
        if (before is null || after is null)
        {
            return;
        }

        string[] ids = [.. before.Items.Concat(after.Items).Select(item => item.Id).Distinct()];
        foreach (string id in ids)
        {
            decimal moved = after.Items.Where(item => item.Id == id).Sum(item => item.Price) - before.Items.Where(item => item.Id == id).Sum(item => item.Price);
            Assert.Equal(moved, seen.Changes.Where(change => change.Key == id).Sum(change => change.Price));
        }

        Assert.All(seen.Changes.Where(change => change.Price != 0), change => Assert.True(
            ids.Contains(change.Key) || change.Subject is ChangeSubject.Discount or ChangeSubject.Tax, change.Key));
        Assert.Equal(before.Discount - after.Discount, seen.Changes.Where(change => change.Subject == ChangeSubject.Discount).Sum(change => change.Price));
        Assert.Equal(after.Tax - before.Tax, seen.Changes.Where(change => change.Subject == ChangeSubject.Tax).Sum(change => change.Price));
    }

    // A sentence is there, ends in a full stop and shows no number that was not asked for.
    private static int Count(string sentence, PlanChange change) => sentence.Length > 5 && sentence[sentence.Length - 1] == '.'
        && !sentence.Contains("E-") && (change.Price == 0 || sentence.Contains("price")) ? 1 : 0;
}
