namespace FrameOpt.Web.State;

/// <summary>Texts of a study to go back to and forward again.</summary>
public sealed class History
{
    private const int Most = 200;

    private readonly List<string> texts = [];
    private int at = -1;

    /// <summary>True when there is an earlier text.</summary>
    public bool CanUndo => at > 0;

    /// <summary>True when a text was undone.</summary>
    public bool CanRedo => at < texts.Count - 1;

    /// <summary>Begins anew with one text.</summary>
    public void Begin(string text)
    {
        texts.Clear();
        at = -1;
        Add(text);
    }

    /// <summary>Adds a text after the present one; what was undone is forgotten.</summary>
    public void Add(string text)
    {
        texts.RemoveRange(at + 1, texts.Count - at - 1);
        texts.Add(text);
        if (texts.Count > Most)
            texts.RemoveAt(0);
        at = texts.Count - 1;
    }

    /// <summary>The text before; valid when <see cref="CanUndo"/>.</summary>
    public string Undo() => texts[--at];

    /// <summary>The text after; valid when <see cref="CanRedo"/>.</summary>
    public string Redo() => texts[++at];
}
