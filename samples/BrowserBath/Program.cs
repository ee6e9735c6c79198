using Microsoft.AspNetCore.Components.WebAssembly.Hosting;
using Refinish.Samples.BrowserBath;

WebAssemblyHostBuilder builder = WebAssemblyHostBuilder.CreateDefault(args);
builder.RootComponents.Add<App>("#app");
await builder.Build().RunAsync();
