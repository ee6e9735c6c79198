using System;
using System.Reflection;
using System.Runtime.Versioning;
using Refinish.Between;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.House;

public class HostTests
{
    [Fact]
    [Evidence(Basis.Contract, "what is tested here is the net8.0 build on a runtime of .NET 8, not a newer one that would take its place")]
    public void The_build_for_net8_runs_on_dotnet_8()
    {
        Assert.Equal(8, Environment.Version.Major);
        Assert.Equal(".NETCoreApp,Version=v8.0", typeof(Measure).Assembly.GetCustomAttribute<TargetFrameworkAttribute>()!.FrameworkName);
    }

    [Fact]
    [Evidence(Basis.Contract, "a library compiled against the netstandard2.0 build sets init-only properties of the net8.0 build; without the forwarded marker: MissingMethodException")]
    public void A_library_for_netstandard_runs_beside_the_newer_build() =>
        Assert.Equal(160, ShopGun.Measured().FluidRate.MillilitersPerMinute, 1e-9);
}
