/** Lists drawn up from the resolved steps. Pure functions: no Node module, no disk, no clock, so that a browser runs them. */
export { type ConsumableNeed, consumableNeeds, type Waste, wasteOf } from './consumables.ts';
export { csvCell, csvText, ORDER_FILE, orderCsv } from './csv.ts';
export { type EnergySteps, energySteps } from './energies.ts';
export {
  type CardNeeds,
  cardNeeds,
  type OrderBook,
  orderBook,
  type Stocked,
  stocked,
  type WantedPart,
} from './needs.ts';
export { orderList } from './order.ts';
export type { ConsumableLine, Jobs, KitLine, OrderLine, OrderList, PartLine } from './order-types.ts';
export { type PartFlow, partFlow } from './part-flow.ts';
export { type KitContent, type KitNeed, longest, type PartNeed, type PartNeeds, partNeeds } from './parts.ts';
export {
  type NeededBy,
  type SetUpCard,
  type SetUpConsumable,
  type SetUpLift,
  type SetUpList,
  type SetUpTool,
  setUpList,
  sortedBy,
} from './set-up.ts';
export { type StageTime, type Times, timesOf, type Wait } from './times.ts';
export { compareText, groupTools, type SortedTool, type ToolGroup } from './tools.ts';
export {
  amountText,
  cardText,
  counted,
  jobsText,
  kindText,
  leadText,
  needText,
  noteText,
  orderText,
} from './words.ts';
export { type WrenchSettings, wrenchSettings } from './wrench-settings.ts';
