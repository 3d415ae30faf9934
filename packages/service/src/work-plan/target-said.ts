import type { Family } from '@brinewright/equipment';
import { type MessageValue, message } from '@brinewright/words';
import type { Target } from '../recognition/recognition.ts';
import { featureTitle, roleTitle, valueTitle } from '../repair/titles.ts';

/** A target as the trade calls it: the part, the order of the operation, the settings, or what the valve becomes. */
export const targetSaid = (family: Family, target: Target): MessageValue => {
  switch (target.kind) {
    case 'replace':
      return roleTitle(target.role);
    case 'operation':
      return family.operations.find(({ id }) => id === target.operation)?.order ?? target.operation;
    case 'settings':
      return message('plan.target.settings');
    case 'convert':
      return message('plan.says.feature', {
        feature: featureTitle(family, target.feature),
        values: valueTitle(family, target.feature, target.to),
      });
  }
};
