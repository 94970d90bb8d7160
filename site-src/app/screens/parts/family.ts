// What a family of rules is called.
import { type Key, t } from '../../i18n.ts';

export const familyName = (family: string) => t(`pencils.family.${family}` as Key);
