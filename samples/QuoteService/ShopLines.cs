using System.Collections.Generic;
using System.Linq;
using Refinish.Estimating;

namespace Refinish.Samples.QuoteService;

/// <summary>What a quote costs the shop and brings it, line by line, for its own books.</summary>
internal sealed record ShopLines(
    string Currency, decimal Cost, decimal Net, decimal Tax, decimal Total, decimal Profit, IReadOnlyList<ShopLines.Line> Lines)
{
    public static ShopLines Of(PriceEstimate price) => new(
        price.Book.Currency.Code, price.Cost!.Value, price.Net!.Value, price.Tax!.Value, price.Total!.Value, price.Profit!.Value,
        [.. price.Lines.Select(Line.Of)]);

    internal sealed record Line(
        string Id, string Item, string? HostCode, string Category, string? Fixture, string? Room, string? Worker, string Description,
        decimal Quantity, string Unit, decimal Rate, decimal Cost, decimal Price, IReadOnlyList<string> Taxes)
    {
        public static Line Of(EstimateLine line) => new(
            line.Id, line.Item, line.HostCode, line.Category.ToString("G"), line.Fixture, line.Room, line.Worker, line.Description,
            line.Quantity, line.Unit.Symbol(), line.Rate, line.Cost, line.Price, line.Taxes);
    }
}
