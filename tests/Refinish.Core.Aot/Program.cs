using System;
using System.Text;
using Refinish;
using Refinish.Jobs;
using Refinish.Json;
using Refinish.Pictures;
using Refinish.Samples.BathroomJob;

// All that the three libraries say of one invented job, to be compared character for character with what the just-in-time compiler makes of it.
Console.OutputEncoding = Encoding.UTF8;
Job job = JobJson.Read(JobJson.Write(Scenario.Guesthouse()));
JobPlan plan = job.Plan();
Paper paper = new(DisplayUnits.Si);
JobSheet.Write(paper, plan);
CautionSheet.Write(paper, plan);
MixingCards.Write(paper, plan);
CrewSheet.Write(paper, plan);
WorkSheet.Write(paper, plan);
AirSheet.Write(paper, plan);
PriceSheet.Write(paper, plan);
HandoverSheet.Write(paper, plan);
Console.Write(paper.ToString());
if (args is ["--sheets"])
{
    return;
}

Console.WriteLine(plan.Workings().ToPlainText(DisplayUnits.UsCustomary));
Console.WriteLine(JobJson.Write(job));
Console.WriteLine(PlanJson.Write(plan));
Console.WriteLine(PlanJson.Read(PlanJson.Write(plan)));
foreach (Picture picture in (Picture[])[new TimelinePicture(plan), new CurePicture(plan), new AirPicture(plan), new PricePicture(plan), new FixturePicture(job.Fixtures[0].Fixture, "tub")])
{
    Console.WriteLine(picture.ToSvg());
}
