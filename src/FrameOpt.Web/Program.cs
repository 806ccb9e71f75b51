using FrameOpt.Web;
using FrameOpt.Web.State;
using FrameOpt.Web.Work;
using Microsoft.AspNetCore.Components.WebAssembly.Hosting;

var builder = WebAssemblyHostBuilder.CreateDefault(args);
builder.RootComponents.Add<Shell>("#app");
builder.Services.AddSingleton<Device>().AddSingleton<Session>().AddSingleton<QuickSearch>()
    .AddSingleton<Card>().AddSingleton<CardFiles>().AddSingleton<RunsTable>();
builder.Services.AddSingleton(services => new FullRun(
    services.GetRequiredService<Session>(), services.GetRequiredService<Device>(), AnswerJson.Read));
await builder.Build().RunAsync();
