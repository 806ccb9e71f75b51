using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace FrameOpt.Web.State;

/// <summary>What only the browser can do: keep, save and print files, and say where a picture is on the screen.</summary>
/// <param name="js">Of the page; calls return at once because the model runs in the page.</param>
public sealed class Device(IJSRuntime js)
{
    private readonly IJSInProcessRuntime page = (IJSInProcessRuntime)js;

    /// <summary>What was kept under a name between visits, or null.</summary>
    public string? Read(string name) => page.Invoke<string?>("frameopt.read", name);

    /// <summary>Keeps a text between visits; false where the browser does not allow it.</summary>
    public bool Write(string name, string? text) => page.Invoke<bool>("frameopt.write", name, text);

    /// <summary>Saves a text as a file.</summary>
    public void Save(string name, string text) => page.InvokeVoid("frameopt.save", name, text);

    /// <summary>Saves a file that the last run wrote.</summary>
    public void SaveResult(string name) => page.InvokeVoid("frameopt.saveResult", name);

    /// <summary>Asks for a file to open; it comes to the shell.</summary>
    public void Pick() => page.InvokeVoid("frameopt.pick");

    /// <summary>Lets the page draw and answer before the work goes on.</summary>
    public ValueTask Pause() => js.InvokeVoidAsync("frameopt.pause");

    /// <summary>Shows the top of the page.</summary>
    public void ToTop() => page.InvokeVoid("scrollTo", 0, 0);

    /// <summary>Prints what the style sheet shows on paper.</summary>
    public void Print() => page.InvokeVoid("print");

    /// <summary>Follows a pointer until it is released.</summary>
    /// <param name="handle">What was touched.</param>
    /// <param name="pointer">Its number.</param>
    /// <param name="x">Where it was touched.</param>
    /// <param name="y">Where it was touched.</param>
    /// <param name="moved">Its method Moved is called with how far it went, in picture units.</param>
    public void Follow<T>(ElementReference handle, long pointer, double x, double y, DotNetObjectReference<T> moved)
        where T : class => page.InvokeVoid("frameopt.follow", handle, pointer, x, y, moved);

    /// <summary>Where a click fell in a picture, in picture units.</summary>
    public double[] PlaceIn(ElementReference picture, double x, double y) => page.Invoke<double[]>("frameopt.placeIn", picture, x, y);

    /// <summary>Calls the shell when files are opened or dropped and when keys for undo and redo are pressed.</summary>
    public void Listen<T>(DotNetObjectReference<T> shell)
        where T : class => page.InvokeVoid("frameopt.listen", shell);

    /// <summary>Runs a study beside the page, so that the page stays usable.</summary>
    /// <param name="job">The study as JSON.</param>
    /// <param name="task">What to do with it.</param>
    /// <param name="progress">Its methods Progress and Answered are called.</param>
    /// <returns>The names of its files; null when it was stopped.</returns>
    public ValueTask<string[]?> RunBeside<T>(string job, RunTask task, DotNetObjectReference<T> progress)
        where T : class => js.InvokeAsync<string[]?>("frameopt.run", CancellationToken.None, job, $"{task}", progress);

    /// <summary>Does something short beside the page, whatever runs there, and saves the files that it makes.</summary>
    /// <param name="job">As the task takes it.</param>
    /// <param name="task">What to do.</param>
    /// <returns>Its answer.</returns>
    public ValueTask<string> Ask(string job, RunTask task) =>
        js.InvokeAsync<string>("frameopt.ask", CancellationToken.None, job, $"{task}");

    /// <summary>Stops the run.</summary>
    public void StopRun() => page.InvokeVoid("frameopt.stop");
}
