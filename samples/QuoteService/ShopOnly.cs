using System;
using System.Net.Http.Headers;
using System.Security.Cryptography;
using System.Text;
using System.Threading.Tasks;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.Configuration;

namespace Refinish.Samples.QuoteService;

/// <summary>
/// Costs, wages and profit are nobody's business but the shop's: what stands behind this asks for the shop's password
/// (<c>Shop:Password</c> in the configuration), and without one it is not there. It goes with every request in the clear, so have TLS
/// in front.
/// </summary>
internal sealed class ShopOnly(IConfiguration configuration) : IEndpointFilter
{
    public async ValueTask<object?> InvokeAsync(EndpointFilterInvocationContext context, EndpointFilterDelegate next)
    {
        if (configuration["Shop:Password"] is not { Length: > 0 } password)
        {
            return TypedResults.NotFound();
        }

        if (Knows(context.HttpContext.Request.Headers.Authorization, password))
        {
            context.HttpContext.Response.Headers.CacheControl = "no-store";
            return await next(context);
        }

        context.HttpContext.Response.Headers.WWWAuthenticate = "Basic realm=\"shop\", charset=\"UTF-8\"";
        return TypedResults.Unauthorized();
    }

    // Any name will do; the time that the comparison takes tells nothing of the password.
    private static bool Knows(string? authorization, string password)
    {
        if (!AuthenticationHeaderValue.TryParse(authorization, out AuthenticationHeaderValue? said)
            || said is not { Scheme: "Basic", Parameter: { } coded })
        {
            return false;
        }

        byte[] bytes = new byte[coded.Length];
        if (!Convert.TryFromBase64String(coded, bytes, out int written))
        {
            return false;
        }

        string words = Encoding.UTF8.GetString(bytes, 0, written);
        return words.IndexOf(':', StringComparison.Ordinal) is >= 0 and int at
            && CryptographicOperations.FixedTimeEquals(Hash(words[(at + 1)..]), Hash(password));
    }

    private static byte[] Hash(string words) => SHA256.HashData(Encoding.UTF8.GetBytes(words));
}
