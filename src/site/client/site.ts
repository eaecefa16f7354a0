/** What pages gain when scripts run. Every page is complete without it, except for the search. */

import { markDue } from './due.ts';
import { attachFind } from './find-box.ts';
import { preparePrint } from './print.ts';
import { prepareProcedure } from './procedure.ts';
import { enhanceRegisters } from './registers.ts';
import { attachSerial } from './serial.ts';

markDue(document, new Date());
enhanceRegisters(document);
preparePrint();
for (const form of document.querySelectorAll<HTMLFormElement>('form[data-find]')) attachFind(form);
for (const form of document.querySelectorAll<HTMLFormElement>('form[data-serial]')) attachSerial(form);
const procedure = document.querySelector<HTMLElement>('[data-procedure]');
if (procedure !== null) prepareProcedure(procedure);
