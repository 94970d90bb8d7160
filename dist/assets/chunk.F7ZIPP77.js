var r=t=>`sutur:${t}:`,s=t=>`${r(t)}state`,o="brought";export{r as a,s as b,o as c};
