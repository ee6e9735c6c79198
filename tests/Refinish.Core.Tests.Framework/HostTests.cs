using System;
using System.Reflection;
using System.Runtime.Versioning;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.House;

public class HostTests
{
    [Fact]
    [Evidence(Basis.Contract, "what is tested here is the netstandard2.0 build in the manner of .NET Framework")]
    public void The_build_for_netstandard_runs_on_the_framework()
    {
        Assert.Equal("mscorlib", typeof(object).Assembly.GetName().Name);
        Assert.Equal(4, Environment.Version.Major);
        Assert.Equal(".NETStandard,Version=v2.0", typeof(Measure).Assembly.GetCustomAttribute<TargetFrameworkAttribute>()!.FrameworkName);
    }
}
