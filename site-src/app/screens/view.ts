// What a screen is: a node, its title, and how it follows the state.

export interface View { node: HTMLElement; title: string; update: () => void; leave?: () => void }
