using System.Reflection;
using System.Runtime.Versioning;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.House;

public class HostTests
{
    [Fact]
    [Evidence(Basis.Contract, "what is tested here is the netstandard2.0 build, whatever the runtime would have preferred")]
    public void The_build_is_the_one_for_netstandard() =>
        Assert.Equal(".NETStandard,Version=v2.0", typeof(Measure).Assembly.GetCustomAttribute<TargetFrameworkAttribute>()!.FrameworkName);
}
