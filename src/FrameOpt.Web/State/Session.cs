using FrameOpt.Model;
using FrameOpt.Studies;
using FrameOpt.StudyFile;
using FrameOpt.StudyFile.Editing;

namespace FrameOpt.Web.State;

/// <summary>The study that is open: its text is the one truth, everything else follows from it.</summary>
/// <param name="device">Keeps it between visits.</param>
public sealed class Session(Device device)
{
    private const string OpenKey = "frameopt:open";
    private const int MostKept = 3;

    private static readonly StudyReadResult nothingRead = new(null, []);

    private readonly History history = new();
    private Study? asWritten;
    private string number = "";
    private StoredStudy stored = new("study.yaml", "", [], "", null, []);

    /// <summary>The study or what is kept of it changed: draw again.</summary>
    public event Action? Changed;

    /// <summary>Another design is looked at; the study is the same.</summary>
    public event Action? Moved;

    /// <summary>True once a study is open.</summary>
    public bool IsOpen => number.Length > 0;

    /// <summary>False where the browser keeps nothing.</summary>
    public bool IsKept { get; private set; } = true;
    /// <summary>The study file and what lies beside it.</summary>
    public StoredStudy Stored => stored;
    /// <summary>The text, to look values up in.</summary>
    public StudyEdit Edit { get; private set; } = StudyEdit.Of("");

    /// <summary>What the reader of the command line says of it.</summary>
    public StudyReadResult Reading { get; private set; } = nothingRead;

    /// <summary>As understood; null while there is something to correct.</summary>
    public Study? Study => Reading.Study;

    /// <summary>The study without a variant: measurements correct the file as it stands.</summary>
    public Study? AsWritten => stored.Variant.Length == 0 ? Study : asWritten ??= StudyFiles.Read(stored with { Variant = "" }).Study;

    /// <summary>The design looked at.</summary>
    public FrameGeometry Hand { get; private set; }

    /// <summary>Designs kept to compare with, three at most.</summary>
    public IReadOnlyList<FrameGeometry> Kept { get; private set; } = [];

    /// <summary>Counts the texts read, so that an answer knows which it belongs to.</summary>
    public int Edition { get; private set; }

    /// <summary>Texts to go back to.</summary>
    public History History => history;

    /// <summary>The studies that are kept.</summary>
    public Shelf Shelf { get; } = new(device);

    /// <summary>Opens the study of the last visit, if there is one.</summary>
    public void Resume()
    {
        if (device.Read(OpenKey) is { Length: > 0 } last)
            Reopen(last);
    }

    /// <summary>Opens a study that is kept.</summary>
    public void Reopen(string one)
    {
        if (Shelf.Find(one) is { } found)
            Begin(one, found);
    }

    /// <summary>Opens a text as a new study; one that is kept just so is opened again.</summary>
    public void Open(string name, string text)
    {
        if (Shelf.All().FirstOrDefault(kept => kept.Study.Name == name && kept.Study.Text == text) is { Number: { } known })
            Reopen(known);
        else
            Begin(Shelf.Next(), new StoredStudy(name, text, [], "", null, []));
    }

    /// <summary>Forgets a study that is kept.</summary>
    public void Forget(string one)
    {
        Shelf.Remove(one);
        Changed?.Invoke();
    }

    /// <summary>Closes the study; it stays kept.</summary>
    public void Close()
    {
        (number, Reading) = ("", nothingRead);
        device.Write(OpenKey, "");
        Changed?.Invoke();
    }

    /// <summary>Replaces one value of the text.</summary>
    public void Set(string path, string value) => Write(Edit.With(path, value));

    /// <summary>Replaces the text.</summary>
    public void Write(string text)
    {
        if (text == stored.Text)
            return;
        history.Add(text);
        Take(stored with { Text = text });
    }

    /// <summary>Adds or replaces a file that the study reads.</summary>
    public void WriteBeside(string name, string text) => Take(stored.With([(name, text)]));

    /// <summary>Keeps what was measured, and files of it that the study does not read.</summary>
    public void KeepMeasured(StoredMeasured measured, params IEnumerable<(string Name, string Text)> files) =>
        Keep(stored.With(files) with { Measured = measured });

    /// <summary>Keeps measured runs and how they are analysed.</summary>
    public void KeepRuns(StoredRuns how, string table)
    {
        Keep(stored.With([(StoredRuns.FileName, table)]) with { Runs = how });
        Changed?.Invoke();
    }

    /// <summary>What was measured.</summary>
    public StoredMeasured Measured => stored.Measured ?? StoredMeasured.None;

    /// <summary>Goes back to the text before the last change.</summary>
    public void Undo()
    {
        if (history.CanUndo)
            Take(stored with { Text = history.Undo() });
    }

    /// <summary>Takes an undo back.</summary>
    public void Redo()
    {
        if (history.CanRedo)
            Take(stored with { Text = history.Redo() });
    }

    /// <summary>Looks at another variant of the study.</summary>
    public void Choose(string variant) => Take(stored with { Variant = variant });

    /// <summary>True while the design looked at is being dragged.</summary>
    public bool IsDragged { get; private set; }

    /// <summary>Looks at a design. While something is dragged it is not yet kept.</summary>
    public void Look(FrameGeometry design, bool isDragged = false)
    {
        if (isDragged && IsDragged && design == Hand)
            return;
        (Hand, IsDragged) = (design, isDragged);
        if (!isDragged)
            Keep(stored with { Hand = StoredStudy.Numbers(design) });
        Moved?.Invoke();
    }

    /// <summary>Keeps a design to compare with, or drops it.</summary>
    public void Compare(FrameGeometry design)
    {
        Kept = Kept.Contains(design) ? [.. Kept.Where(one => one != design)] : [.. Kept.Append(design).TakeLast(MostKept)];
        Keep(stored with { Kept = [.. Kept.Select(StoredStudy.Numbers)] });
        Changed?.Invoke();
    }

    private void Begin(string one, StoredStudy study)
    {
        number = one;
        device.Write(OpenKey, one);
        history.Begin(study.Text);
        (Hand, Kept) = (default, []);
        Take(study);
    }

    private void Take(StoredStudy next)
    {
        Keep(next);
        Edition++;
        asWritten = null;
        Edit = StudyEdit.Of(next.Text);
        Reading = StudyFiles.Read(next);
        if (Study is { } study)
        {
            Hand = Hand != default ? Designs.On(study, Hand) : StoredStudy.Geometry(next.Hand) is { } kept ? kept : Designs.First(study);
            if (Kept.Count == 0)
                Kept = [.. next.Kept.Select(StoredStudy.Geometry).OfType<FrameGeometry>()];
        }

        Changed?.Invoke();
    }

    private void Keep(StoredStudy next)
    {
        stored = next;
        if (IsOpen)
            IsKept = Shelf.Put(number, next);
    }
}
