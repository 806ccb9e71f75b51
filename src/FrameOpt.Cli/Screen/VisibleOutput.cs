using FrameOpt.StudyFile.Syntax;
using Spectre.Console;
using Spectre.Console.Rendering;

namespace FrameOpt.Cli.Screen;

/// <summary>Everything written to a console passes through here: titles, names and cells of files come as text and never as commands to
/// the terminal.</summary>
internal sealed class VisibleOutput : IRenderHook
{
    public IEnumerable<IRenderable> Process(RenderOptions options, IEnumerable<IRenderable> renderables) =>
        renderables.Select(renderable => new Shown(renderable));

    private sealed class Shown(IRenderable inner) : IRenderable
    {
        public Measurement Measure(RenderOptions options, int maxWidth) => inner.Measure(options, maxWidth);

        // The console's own commands (colours, progress bars) are marked as such; all else is text.
        public IEnumerable<Segment> Render(RenderOptions options, int maxWidth) => inner.Render(options, maxWidth).Select(segment =>
            segment.IsControlCode || segment.IsLineBreak ? segment : new Segment(Visible(segment.Text), segment.Style));

        private static string Visible(string text) => text.Contains('\n')
            ? string.Join('\n', text.Split('\n').Select(VisibleText.Of))
            : VisibleText.Of(text);
    }
}
