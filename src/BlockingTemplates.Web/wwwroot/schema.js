// The project file's schema: which choices a place has, what it is for, and which numbers are lengths.
let schema = null;

export function learn(read) {
  schema = read;
}

function resolved(part) {
  return part?.$ref ? { ...schema.$defs[part.$ref.split("/").pop()], isLength: part.$ref === "#/$defs/length", description: part.description } : part;
}

// Everything the schema says may stand at a place, whatever the kind of piece.
function said(at) {
  let parts = [schema];
  for (const step of [...at, null]) {
    const open = [];
    for (let i = 0; i < parts.length; i++) {
      const part = resolved(parts[i]);
      if (!part) continue;
      open.push(part);
      for (const other of [...(part.anyOf ?? []), ...(part.oneOf ?? []), ...(part.allOf ?? [])]) parts.push(other);
      if (part.then) parts.push(part.then);
    }
    if (step === null) return open;
    parts = open.flatMap(part => typeof step === "number"
      ? [part.prefixItems?.[step] ?? part.items]
      : [part.properties?.[step] ?? (part.additionalProperties === false ? null : part.additionalProperties)]).filter(p => p && typeof p === "object");
  }
  return [];
}

export const isLength = at => said(at).some(p => p.isLength);
export const choices = at => said(at).find(p => p.enum)?.enum.filter(c => c !== null) ?? [];
export const purpose = at => said(at).find(p => p.description)?.description ?? "";
