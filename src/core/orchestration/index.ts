export { ORCHESTRATIONS, type OrchestrationRule, type StrokeTest } from './rules.ts';
