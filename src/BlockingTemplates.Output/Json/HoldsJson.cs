using System.Text.Json;
using BlockingTemplates.Drawing.Guides;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Pins.Wires;

namespace BlockingTemplates.Output.Json;

/// <summary>The parts of plan.json that tell of wires, supplies and the ways of holding each edge.</summary>
internal static class HoldsJson
{
    public static void Write(Plan plan, Utf8JsonWriter json)
    {
        json.List("wires", plan.Pins.Wires, w => Wire(plan, w, json));
        json.List("supplies", plan.Supplies, s => Supply(s, json));
        json.List("holding", plan.Advice, a => Advice(plan, a, json));
    }

    private static void Wire(Plan plan, Wire wire, Utf8JsonWriter json)
    {
        json.WriteStartObject();
        json.WriteNumber("number", wire.Number);
        json.WriteString("edge", plan.Pins.Edges[wire.Edge].Name);
        Form(wire.Form, wire.LengthMm, json);
        json.WriteBoolean("owned", wire.Owned);
        json.Mm("fromMm", wire.FromMm);
        json.Mm("toMm", wire.ToMm);
        json.Ratio("fromCount", wire.FromCount);
        json.Ratio("toCount", wire.ToCount);
        Number("picked", wire.Picked, json);
        json.Mm("sagMm", wire.SagMm.Most);
        json.Mm("sagIfSoftMm", wire.SagMm.Least);
        json.WriteEndObject();
    }

    private static void Supply(Supply supply, Utf8JsonWriter json)
    {
        json.WriteStartObject();
        json.WriteString("kind", HoldWords.Kind(supply.Kind));
        Form(supply.Form, supply.LengthMm, json);
        json.WriteNumber("layOut", supply.LayOut);
        json.WriteNumber("spare", supply.Spare);
        Number("owned", supply.Owned, json);
        Number("buy", supply.Buy, json);
        json.WriteEndObject();
    }

    private static void Advice(Plan plan, EdgeAdvice advice, Utf8JsonWriter json)
    {
        json.WriteStartObject();
        json.WriteString("edge", plan.Pins.Edges[advice.Edge].Name);
        json.WriteString("planned", HoldWords.Way(plan.Pins.Edges[advice.Edge].Treatment.Hold));
        json.WriteString("suggested", HoldWords.Way(advice.Suggested));
        json.WriteString("why", advice.Why);
        json.List("ways", advice.Ways, w =>
        {
            json.WriteStartObject();
            json.WriteString("hold", HoldWords.Way(w.Hold));
            json.WriteNumber("pins", w.Pins);
            json.WriteNumber("pinsIfSoft", w.PinsIfSoft);
            json.WriteNumber("combs", w.Combs);
            json.List("wiresMm", w.Wires, l => json.Mm(l.LengthMm));
            json.WriteBoolean("serves", w.Serves);
            if (w.IsOwned is { } owned)
                json.WriteBoolean("owned", owned);
            else
                json.WriteNull("owned");
            json.WriteEndObject();
        });
        json.WriteEndObject();
    }

    private static void Form(WireForm? form, double? lengthMm, Utf8JsonWriter json)
    {
        json.Mm("lengthMm", lengthMm);
        json.Mm("diameterMm", form?.Diameter.Millimetres);
        if (form is null)
            json.WriteNull("temper");
        else
            json.WriteString("temper", form.Kind == WireKind.Stiff ? "stiff" : "flexible");
    }

    private static void Number(string name, int? number, Utf8JsonWriter json)
    {
        if (number is { } value)
            json.WriteNumber(name, value);
        else
            json.WriteNull(name);
    }
}
