var t=s=>`lessons/${s}.html`;export{t as a};
