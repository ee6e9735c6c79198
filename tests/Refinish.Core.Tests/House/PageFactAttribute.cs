using System;
using System.Linq;
using System.Reflection;
using System.Runtime.Versioning;
using Xunit;

namespace Refinish.Tests.House;

/// <summary>
/// A test of a page that depends on the instructions and the tests of one build: other targets hold stand-ins for members that are
/// missing there, and their suites have tests of their own.
/// </summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class PageFactAttribute : FactAttribute
{
    public PageFactAttribute()
    {
        string target = typeof(Source).Assembly.GetCustomAttribute<TargetFrameworkAttribute>()!.FrameworkName;
        Skip = target.EndsWith("v10.0", StringComparison.Ordinal) ? null : "made from the build for .NET 10";
    }
}
