using FrameOpt.Model;
using FrameOpt.Studies;
using FrameOpt.StudyFile.Plausibility;
using FrameOpt.StudyFile.Sections;
using FrameOpt.StudyFile.Syntax;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.StudyFile;

/// <summary>Reads all sections of a study and checks them against each other.</summary>
internal static class StudySectionsReader
{
    /// <summary>The study; valid only if there are no errors.</summary>
    public static Study? Read(Node root, string hash, DiagnosticBag diagnostics)
    {
        if (root is not Node.Map)
        {
            diagnostics.Add(root, "A study file is a group of keys.", "Begin with the line `format: 1`.");
            return null;
        }

        (root, var reasons) = Reasons.Take(root, diagnostics);
        var study = Section.Open(root, new Node.Scalar("", true, 1, 1), "", StudyKeys.File, diagnostics)!;
        CheckFormat(study);
        TemplateFigures.CheckName(study);
        var machine = MachineReader.Read(study.Child("machine", StudyKeys.Machine));
        var wing = WingReader.Read(study.Child("wing", StudyKeys.Wing));
        var phases = MissionReader.Read(study);
        var section = study.Child("factors", StudyKeys.Factors);
        var holes = HoleReader.Read(section);
        var factors = FactorReader.Read(section, holes);
        var baseline = SettingsReader.Baseline(study.Child("baseline", StudyKeys.Baseline), machine, factors);
        var strength = SettingsReader.Strength(study.Child("strength", StudyKeys.Strength));

        var responses = new ResponseReader(phases, diagnostics);
        var hasEngine = study.Value("machine") is not Node.Map given || given.Entries.Any(entry => entry.Key.Text == "engine");
        CheckEngine(study, hasEngine, phases);
        var needs = new Prerequisites(hasEngine, study.Has("strength"), study.Has("baseline"), diagnostics);
        var objectives = ObjectiveReader.Read(study, responses, needs);
        var limits = LimitReader.Read(study, objectives, responses, needs);
        var search = SearchReader.Read(study, factors, objectives, responses);
        GridChecks.Check(study, factors, holes, search, wing, phases.Count);
        var ranking = RankingReader.Read(study, objectives, responses);
        var band = SettingsReader.Band(study, phases);
        var noise = NoiseReader.Read(study);
        var origins = OriginReader.Read(study, root);
        var plan = PlanReader.Read(study.Child("plan", StudyKeys.Plan), responses, needs, objectives, factors);
        HoleReader.Check(study, holes, search, plan);
        var title = Title(study);
        var question = study.Text("question")?.ReplaceLineEndings(" ").Trim() ?? "";
        if (diagnostics.HasErrors)
        {
            ProductLineReader.Read(study, (Node.Map)root, null, responses, needs);
            return null;
        }

        AirspeedWarnings.Check(study, phases, machine!, wing!);
        StudyPlausibility.Check(root, machine!, wing!, phases, factors, baseline, diagnostics);
        var read = new Study(title, question, machine!, wing!, phases, factors, objectives, limits, ranking, baseline, strength, band,
            diagnostics.Assumptions, [.. diagnostics.Warnings.Select(warning => warning.Text)], hash)
        {
            Plan = plan,
            Holes = holes,
            Noise = noise,
            Origins = origins,
            Reasons = reasons,
            Search = search!,
            Files = diagnostics.Files,
        };
        var runs = plan is null ? 0 : PlanReader.CountRuns(plan, factors, study);
        if (diagnostics.HasErrors)
            return null;
        if (search is SearchSetting.Evolutionary { Start: SearchStart.FromPlan } fromPlan)
            read = read with { Search = fromPlan with { Start = new SearchStart.FromPlan(runs) } };
        var line = ProductLineReader.Read(study, (Node.Map)root, read, responses, needs);
        read = read with { Line = line };
        read = diagnostics.HasErrors ? read : read with { Decision = DecisionReader.Read(study, read) };
        return diagnostics.HasErrors ? null : read;
    }

    private static string Title(Section study)
    {
        var title = study.Text("title")?.Trim() ?? "";
        if (title.Contains('\n'))
            study.DiagnosticBag.Add(study.At("title"), "title is one line.", "Put the rest under `question`.");
        return title;
    }

    private static void CheckFormat(Section study)
    {
        if (study.Text("format") is { } format && format != "1")
            study.DiagnosticBag.Add(study.At("format"), "This version reads study files of format 1.", "Write `format: 1`.");
    }

    private static void CheckEngine(Section study, bool hasEngine, IReadOnlyList<Phase> phases)
    {
        if (hasEngine || phases.FirstOrDefault(phase => phase.Power is PhasePower.FullThrottle) is not { } full)
            return;
        study.DiagnosticBag.Add(study.KeyAt("machine"), $"machine.engine is missing: phase {full.Name} is at full throttle.",
            StudyKeys.Machine.Find("engine")!.FixWhenMissing("under machine"));
    }
}
