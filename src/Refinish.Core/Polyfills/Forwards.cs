// A library compiled against the netstandard2.0 build names the marker of init setters in this assembly; beside the newer builds it is
// sent on to the framework's.
#if NET8_0_OR_GREATER
using System.Runtime.CompilerServices;

[assembly: TypeForwardedTo(typeof(IsExternalInit))]
#endif
