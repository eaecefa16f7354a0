/** `npm run verify -- DIST`: whether a published folder is what was issued, and names every file that is not. */

import { type Diagnostic, hasErrors, printable, renderFull } from '../src/diagnostics/index.ts';
import { type Opened, openShop, SHOP_OPTION, say } from './lib/control-command.ts';
import { counted } from './lib/control-words.ts';
import { runCommand, UsageFault } from './lib/faults.ts';
import { outFolder, readCommand, said } from './lib/options.ts';
import { AGAINST_MANIFEST, digestsOf, fileFindings } from './lib/verify-files.ts';
import { answerFingerprint, typedFingerprint } from './lib/verify-fingerprint.ts';
import { type Finding, readManifest } from './lib/verify-manifest.ts';
import { rebuildFindings } from './lib/verify-rebuild.ts';
import { documentFindings, outOfDate, publishedLines, sinceWords } from './lib/verify-standing.ts';

await runCommand(async () => {
  const { options, words } = readCommand(
    'verify',
    'Checks a published folder against its manifest, the ledger, the snapshots and the signatures, and names every file that differs.',
    {
      ...SHOP_OPTION,
      rebuild: { type: 'boolean', help: 'builds once more for the same day and compares every byte' },
      fingerprint: {
        type: 'string',
        help: 'the eight signs at the foot of a card: says which card it is, and whether it may be used',
      },
    },
    { name: 'DIST', help: 'the published folder; default: dist' },
  );
  const [given, second] = words;
  if (second !== undefined) throw new UsageFault(`\`${second}\` is one word too many`, 'name one published folder');
  const typed = said(options['fingerprint']);
  const fingerprint = typed === '' ? undefined : typedFingerprint(typed);
  const opened = openShop(options);
  const broken = ledgerFaults(opened);
  if (fingerprint !== undefined) {
    if (broken.length > 0) return 1;
    const { known, lines } = answerFingerprint(
      fingerprint,
      opened.compiled.control.ledger,
      opened.compiled.resolved,
      opened.control.today,
    );
    say(lines);
    if (given === undefined) return known ? 0 : 1;
    say(['']);
  }
  const folder = outFolder({ out: given });
  const findings = await verify(opened, folder, given ?? folder, options['rebuild'] === true);
  say(findings.map((f) => `${f.kind.padEnd(11)}  ${f.words}`));
  const count = findings.length + broken.length;
  say([count === 0 ? 'everything holds' : `${counted(count, 'fault')}: this folder is not to be relied on as it is`]);
  return count === 0 ? 0 : 1;
});

/** Ledger, snapshots, signatures: what the ledger's checks have reported, printed with its lines. */
function ledgerFaults({ compiled }: Opened): readonly Diagnostic[] {
  const { diagnostics, textOf } = compiled;
  const ledger = diagnostics.filter((d) => d.code.startsWith('LDG') && d.severity === 'error');
  if (ledger.length > 0) process.stdout.write(`${renderFull(ledger, textOf)}\n`);
  if (hasErrors(diagnostics.filter((d) => !ledger.includes(d)))) {
    process.stderr.write(
      'the content has errors: the shop’s rules, such as what must be signed, may be read in part (`npm run check`)\n',
    );
  }
  return ledger;
}

async function verify(
  { compiled, control }: Opened,
  folder: string,
  given: string,
  rebuild: boolean,
): Promise<Finding[]> {
  const manifest = readManifest(folder, given);
  if ('kind' in manifest) return [manifest];
  const { ledger } = compiled.control;
  const found = digestsOf(folder);
  say([
    printable(
      `${given}: ${counted(found.size, 'file')}, published for ${manifest.asOf} by version ${manifest.engine} from ${counted(manifest.ledger.entries, 'line')} of the ledger`,
    ),
  ]);
  const findings = fileFindings(found, manifest.files, AGAINST_MANIFEST);
  const published = publishedLines(manifest, ledger);
  if ('finding' in published) findings.push(published.finding);
  else {
    findings.push(...documentFindings(manifest, published.lines));
    findings.push(...outOfDate(manifest, published.lines, ledger, control.today));
    const since = sinceWords(published.lines, ledger);
    if (since !== undefined) say([since]);
    if (since !== undefined && rebuild) {
      say(['a second build takes these lines in: what differs below may come from them']);
    }
  }
  if (!rebuild) {
    say(['the manifest bears no seal of its own: `--rebuild` compares every byte with what this shop’s folder makes']);
    return findings;
  }
  return [...findings, ...(await rebuildFindings(control.folder, folder, manifest, found))];
}
